package org.strawblue.core.evidence.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.strawblue.core.colour.Light;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.evidence.observe.Observation.Bite;
import org.strawblue.core.evidence.observe.Observation.Melt;
import org.strawblue.core.evidence.observe.Observation.State;
import org.strawblue.core.evidence.observe.Seen;
import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.evidence.sample.Weights;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.oxide.FilmColours;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.pyrometry.InfraredReading;
import org.strawblue.core.pyrometry.OvenThermometer;
import org.strawblue.core.pyrometry.Surface;
import org.strawblue.core.steel.Steel;

/**
 * Simulation-based calibration (Talts and others 2018): truths drawn from what is believed, looks drawn from the truths, and the
 * truth's place among the weighed histories, which must be anywhere as often as anywhere else.
 */
class CalibrationTest {

    private static final double ZERO = 273.15;
    private static final double ROOM = 295.15;
    private static final int JOBS = 300;
    private static final int HISTORIES = 8000;
    private static final int BINS = 10;

    /** Jobs of each setup with wrong instruments: each is judged by the whole judge, which draws its histories anew. */
    private static final int SKEWED = 40;

    /** Upper 1 % point of chi-square with nine degrees of freedom (any table of it). */
    private static final double CHI_SQUARE = 21.67;

    private record Setup(Course course, double seconds) {}

    private static List<Setup> setups() {
        Setting.OnPlate on = Setting.OnPlate.steady(290 + ZERO, 2e-5, 0.15, 0.3, ROOM);
        Setting oven = new Setting.InOven(230 + ZERO, 15, 900, 0, 6, 0.15);
        return List.of(
                setup(new PartShape.RoundBar(0.012, 0.06), on, 720),
                setup(new PartShape.RoundBar(0.008, 0.05), on.withCover(), 480),
                setup(new PartShape.Flat(0.003, 0.02, 0.06), oven, 3600),
                setup(new PartShape.RoundBar(0.02, 0.05), Setting.InOven.steady(260 + ZERO, 22, 0.15), 2400));
    }

    private static Setup setup(PartShape shape, Setting setting, double seconds) {
        return new Setup(new Course(shape, ROOM, List.of(new Spell(setting, seconds))), seconds);
    }

    /** What a person would see of history {@code i}: two crayons, the gun, the colour, a thermometer, a file, some of them. */
    private static List<Observation> seen(Ensemble truth, int i, double end, SplittableRandom random, boolean skewed) {
        Seen now = Seen.at(Place.TOP, end);
        List<Observation> looks = new ArrayList<>();
        for (double celsius : new double[] {204, 232, 260, 288}) {
            if (random.nextInt(2) == 0) {
                // a stick that melts 6 K too high
                double rating = celsius + ZERO;
                Observation.Crayon as = new Observation.Crayon(rating + (skewed ? 6 : 0), Melt.DRY, now);
                Choice choice = (Choice) Clues.of(as).orElseThrow();
                looks.add(new Observation.Crayon(rating, Melt.values()[answer(choice, truth, i, random)], now));
            }
        }
        if (random.nextInt(2) == 0) {
            double emissivity = skewed ? 0.4 : truth.influence(Influence.GUN_EMISSIVITY, i);
            double reflected = truth.influence(Influence.REFLECTED, i);
            double reads =
                    InfraredReading.reads(0.95, truth.kelvin(Place.TOP, end, i), emissivity, reflected, reflected);
            Measured gun = (Measured) Clues.of(new Observation.Infrared(reads, 0.95, Surface.BRIGHT, now))
                    .orElseThrow();
            looks.add(new Observation.Infrared(reads + student(random) * gun.spread(), 0.95, Surface.BRIGHT, now));
        }
        if (random.nextInt(2) == 0) {
            looks.add(colour(truth, i, now, random));
        }
        if (random.nextInt(3) == 0) {
            double shows = truth.kelvin(Place.TOP, end, i);
            Measured probe = (Measured) Clues.of(new Observation.PartReads(shows, new OvenThermometer(), now))
                    .orElseThrow();
            double reads = shows + student(random) * probe.spread();
            looks.add(new Observation.PartReads(reads, new OvenThermometer(), now));
        }
        if (random.nextInt(2) == 0) {
            Observation.File file = new Observation.File(60, true, Bite.BITES, State.TEMPERED, now);
            Choice choice = (Choice) Clues.of(file).orElseThrow();
            looks.add(new Observation.File(
                    60, true, Bite.values()[answer(choice, truth, i, random)], State.TEMPERED, now));
        }
        return looks;
    }

    /** The name this eye gives the film. */
    private static Observation colour(Ensemble truth, int i, Seen now, SplittableRandom random) {
        double u = random.nextDouble();
        double[] chances = new double[ColourName.values().length];
        double all = 0;
        for (ColourName name : ColourName.values()) {
            Choice choice = (Choice) Clues.of(named(name, now)).orElseThrow();
            chances[name.ordinal()] = choice.chance(truth, i, 1);
            all += chances[name.ordinal()];
        }
        for (ColourName name : ColourName.values()) {
            u -= chances[name.ordinal()] / all;
            if (u < 0) {
                return named(name, now);
            }
        }
        return named(ColourName.GREY, now);
    }

    private static Observation.Colour named(ColourName name, Seen now) {
        return new Observation.Colour(
                name.word(), FilmColours.standard().band(name, Light.DAYLIGHT), Light.DAYLIGHT, now);
    }

    private static int answer(Choice choice, Ensemble truth, int i, SplittableRandom random) {
        double u = random.nextDouble();
        int answers = choice.answers(truth);
        for (int a = 0; a < answers - 1; a++) {
            u -= choice.chance(truth, i, a);
            if (u < 0) {
                return a;
            }
        }
        return answers - 1;
    }

    /** Student's t with four degrees: a normal over the root of a mean of four squares. */
    private static double student(SplittableRandom random) {
        double sum = 0;
        for (int k = 0; k < 4; k++) {
            double z = normal(random);
            sum += z * z;
        }
        return normal(random) / Math.sqrt(sum / 4);
    }

    private static double normal(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    private static double below(Ensemble ensemble, Weights weights, double[] values, double truth) {
        double sum = 0;
        for (int j = 0; j < ensemble.size(); j++) {
            sum += values[j] < truth ? weights.of(j) : 0;
        }
        return sum;
    }

    private static double chiSquare(int[] ranks) {
        double expected = Arrays.stream(ranks).sum() / (double) ranks.length;
        return Arrays.stream(ranks)
                .mapToDouble(n -> (n - expected) * (n - expected) / expected)
                .sum();
    }

    @Test
    void truthIsAnywhereAmongTheWeighedHistoriesAsOftenAsAnywhereElse() {
        int[] peaks = new int[BINS];
        int[] hardnesses = new int[BINS];
        int within = 0;
        int hardWithin = 0;
        int jobs = 0;
        for (Setup setup : setups()) {
            Optional<Steel> steel = Optional.of(Steel.ofGrade("O1"));
            Ensemble truth = Ensemble.draw(setup.course(), steel, Priors.usual(), JOBS, 71 + jobs, setup.seconds());
            Ensemble ensemble =
                    Ensemble.draw(setup.course(), steel, Priors.usual(), HISTORIES, 5 + jobs, setup.seconds());
            double[] peak = ensemble.values(j -> ensemble.peak(Place.TOP, j));
            double[] hrc = ensemble.values(j -> ensemble.hardness(Place.TOP, setup.seconds(), j));
            SplittableRandom random = new SplittableRandom(9 + jobs);
            for (int i = 0; i < JOBS; i++) {
                List<Clue> clues = seen(truth, i, setup.seconds(), random, false).stream()
                        .flatMap(o -> Clues.of(o).stream())
                        .toList();
                Weights weights = ensemble.weights(
                        (e, j) -> clues.stream().mapToDouble(c -> c.log(e, j)).sum());
                double u = below(ensemble, weights, peak, truth.peak(Place.TOP, i));
                double v = below(ensemble, weights, hrc, truth.hardness(Place.TOP, setup.seconds(), i));
                peaks[(int) Math.min(BINS - 1, u * BINS)]++;
                hardnesses[(int) Math.min(BINS - 1, v * BINS)]++;
                within += u > 0.1 && u < 0.9 ? 1 : 0;
                hardWithin += v > 0.1 && v < 0.9 ? 1 : 0;
                jobs++;
            }
        }
        assertThat(jobs).isGreaterThanOrEqualTo(1000);
        assertThat(chiSquare(peaks)).isLessThan(CHI_SQUARE);
        assertThat(chiSquare(hardnesses)).isLessThan(CHI_SQUARE);
        assertThat((double) within / jobs).isBetween(0.78, 0.82);
        assertThat((double) hardWithin / jobs).isBetween(0.78, 0.82);
    }

    /** Sticks that melt 6 K too high, and a bright part four times as black as believed. */
    @Test
    void wrongWindowsAndEmissivitiesAreToldOrStillCovered() {
        int well = 0;
        int jobs = 0;
        for (Setup setup : setups().subList(0, 2)) {
            Ensemble truth =
                    Ensemble.draw(setup.course(), Optional.empty(), Priors.usual(), SKEWED, 72, setup.seconds());
            Ensemble ensemble =
                    Ensemble.draw(setup.course(), Optional.empty(), Priors.usual(), 1000, 6, setup.seconds());
            SplittableRandom random = new SplittableRandom(10);
            for (int i = 0; i < SKEWED; i++) {
                Judgement judged = Judge.of(ensemble, seen(truth, i, setup.seconds(), random, true));
                boolean holds = judged.peak().band().contains(truth.peak(Place.TOP, i));
                well += holds || judged.conflicting() ? 1 : 0;
                jobs++;
            }
        }
        assertThat((double) well / jobs).isGreaterThanOrEqualTo(0.7);
    }
}
