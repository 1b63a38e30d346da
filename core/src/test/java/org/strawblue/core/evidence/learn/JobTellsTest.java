package org.strawblue.core.evidence.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.evidence.judge.Judge;
import org.strawblue.core.evidence.judge.Judgement;
import org.strawblue.core.evidence.judge.Situation;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.evidence.observe.Observation.Bite;
import org.strawblue.core.evidence.observe.Observation.Melt;
import org.strawblue.core.evidence.observe.Observation.State;
import org.strawblue.core.evidence.observe.Seen;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.pyrometry.InfraredReading;
import org.strawblue.core.pyrometry.Surface;
import org.strawblue.core.pyrometry.Thermocouple;
import org.strawblue.core.steel.Steel;

/** What judged heats tell of the things they were done with: made heats whose truth is known. */
class JobTellsTest {

    private static final double ZERO = 273.15;
    private static final double END = 7200;
    private static final int HISTORIES = 2000;

    private static Situation oven(double celsius, long seed) {
        Setting in = new Setting.InOven(celsius + ZERO, 15, 840, 0, 7, 0.15);
        Course course = new Course(new PartShape.RoundBar(0.008, 0.06), 295.15, List.of(new Spell(in, END)));
        return new Situation(course, Optional.of(Steel.ofGrade("O1")), Priors.usual(), HISTORIES, seed);
    }

    /** What a crayon whose kit melts {@code off} kelvin above its rating does on a part at {@code celsius}. */
    private static Observation crayon(double rating, double celsius, double off) {
        double over = celsius - rating - off;
        Melt melt = over < -8 ? Melt.DRY : over > 4 ? Melt.SLICK : Melt.BARELY;
        return new Observation.Crayon(rating + ZERO, melt, Seen.at(Place.TOP, END));
    }

    private static List<Observation> looks(double celsius, double off, boolean probe) {
        List<Observation> looks = new ArrayList<>();
        for (double rating = 150; rating <= 300; rating += 7) {
            if (Math.abs(rating + off - celsius) < 20) {
                looks.add(crayon(rating, celsius, off));
            }
        }
        if (probe) {
            looks.add(new Observation.PartReads(celsius + ZERO, new Thermocouple("K", 1), Seen.at(Place.TOP, END)));
        }
        return looks;
    }

    private static Map<Influence, Told> told(Judgement judged, String from) {
        return JobTells.of(judged.ensemble(), judged.weights(), from);
    }

    /** An oven 14 K low, three jobs, crayons as they are written: each points there, and all of them closer. */
    @Test
    void jobsPointToTheOvensOffset() {
        ShopKnowledge shop = ShopKnowledge.NOTHING;
        Subject oven = new Subject(Influence.OVEN_OFFSET, "oven");
        for (int job = 0; job < 3; job++) {
            double set = 210 + 25 * job;
            Told told = told(Judge.of(oven(set, job + 1), looks(set - 14, 0, false)), "job " + job)
                    .get(Influence.OVEN_OFFSET);
            assertThat(told).isNotNull();
            assertThat(told.low()).isLessThan(-14);
            assertThat(told.high()).isGreaterThan(-14);
            shop = shop.with(oven, told).value().orElseThrow();
        }
        assertThat(shop.next(oven).orElseThrow().value()).isBetween(-18.0, -9.0);
    }

    /** Bright steel of emissivity 0.3 beside a thermocouple: the gun's patch is told, and better by three jobs than by one. */
    @Test
    void whatTheGunLooksAtIsLearned() {
        ShopKnowledge shop = ShopKnowledge.NOTHING;
        Subject gun = new Subject(Influence.GUN_EMISSIVITY, "gun");
        double[] width = new double[3];
        for (int job = 0; job < 3; job++) {
            double had = 205 + 20 * job;
            List<Observation> looks = looks(had, 0, true);
            double reads = InfraredReading.reads(0.95, had + ZERO, 0.3, 295.15, 295.15);
            looks.add(new Observation.Infrared(reads, 0.95, Surface.BRIGHT, Seen.at(Place.TOP, END)));
            Told told = told(Judge.of(oven(had, job + 7), looks), "job " + job).get(Influence.GUN_EMISSIVITY);
            assertThat(told).isNotNull();
            assertThat(told.value()).isCloseTo(0.3, within(0.03));
            shop = shop.with(gun, told).value().orElseThrow();
            Estimate next = shop.next(gun).orElseThrow();
            width[job] = next.high() - next.low();
        }
        assertThat(width[2]).isLessThan(width[0]);
        Estimate next = shop.next(gun).orElseThrow();
        assertThat(next.low()).isLessThan(0.3);
        assertThat(next.high()).isGreaterThan(0.3);
    }

    /** A kit 40 K off cannot be: the judge says that it does not fit, and from such a heat nothing is to be learned. */
    @Test
    void aWrongKitIsToldAsAContradiction() {
        Judgement judged = Judge.of(oven(230, 3), looks(230, 40, true));
        assertThat(judged.conflicting()).isTrue();
    }

    /** A heat of which nothing was seen tells nothing. */
    @Test
    void nothingSeenTellsNothing() {
        assertThat(told(Judge.of(oven(230, 4), List.of()), "none")).isEmpty();
    }

    static IntStream seeds() {
        return IntStream.range(0, 12);
    }

    /** Whatever was noted of a heat, what it tells is in order, and the shop can take it. */
    @ParameterizedTest
    @MethodSource("seeds")
    void anyLogTellsSomethingInOrderOrNothing(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double set = 120 + 250 * random.nextDouble();
        List<Observation> looks = new ArrayList<>();
        for (int i = random.nextInt(6); i >= 0; i--) {
            looks.add(any(set, random));
        }
        Judgement judged = Judge.of(oven(set, seed), looks);
        ShopKnowledge shop = ShopKnowledge.NOTHING;
        for (var one : told(judged, "job").entrySet()) {
            Told t = one.getValue();
            assertThat(t.low()).isLessThanOrEqualTo(t.value());
            assertThat(t.high()).isGreaterThanOrEqualTo(t.value());
            shop = shop.with(new Subject(one.getKey(), "thing"), t).value().orElseThrow();
            assertThat(shop.next(new Subject(one.getKey(), "thing"))
                            .orElseThrow()
                            .value())
                    .isFinite();
        }
        assertThat(shop.priors(Priors.usual(), List.of("thing"))).isNotNull();
    }

    private static Observation any(double set, SplittableRandom random) {
        double celsius = set - 60 + 120 * random.nextDouble();
        Place place = Place.values()[random.nextInt(Place.values().length)];
        Seen seen = random.nextBoolean() ? Seen.SOME_TIME : Seen.at(place, END * random.nextDouble());
        return switch (random.nextInt(5)) {
            case 0 -> new Observation.Crayon(celsius + ZERO, Melt.values()[random.nextInt(3)], seen);
            case 1 -> new Observation.Infrared(celsius / 2 + ZERO, 0.95, Surface.BRIGHT, seen);
            case 2 ->
                Observation.Colour.named(
                        ColourName.values()[random.nextInt(ColourName.values().length)], Light.DAYLIGHT, seen);
            case 3 ->
                new Observation.File(
                        45 + 20 * random.nextDouble(), true, Bite.values()[random.nextInt(3)], State.TEMPERED, seen);
            default -> new Observation.PartReads(celsius + ZERO, new Thermocouple("K", 2), seen);
        };
    }
}
