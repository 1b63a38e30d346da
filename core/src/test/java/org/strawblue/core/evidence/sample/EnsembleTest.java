package org.strawblue.core.evidence.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.heat.conduction.Conduction;
import org.strawblue.core.heat.course.AnyCourse;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Reduced;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.Trace;
import org.strawblue.core.oxide.FilmGrowth;
import org.strawblue.core.oxide.GrowthLaws;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;

class EnsembleTest {

    private static final double ROOM = 293.15;
    private static final Optional<Steel> O1 = Optional.of(Steel.ofGrade("O1"));
    private static final Course PIN = onPlate(563.15, 720);

    private static Course onPlate(double kelvin, double seconds) {
        return new Course(
                new PartShape.RoundBar(0.012, 0.08),
                ROOM,
                List.of(new Spell(Setting.OnPlate.steady(kelvin, 20e-6, 0.15, 0.3, ROOM), seconds)));
    }

    private static Ensemble pin(int n, long seed) {
        return Ensemble.draw(PIN, O1, Priors.usual(), n, seed, 300, 600);
    }

    @Test
    void theSameSeedGivesTheSameHistoriesAndAnotherGivesOthers() {
        Ensemble one = pin(200, 1);
        Ensemble again = pin(200, 1);
        Ensemble other = pin(200, 2);
        for (int i = 0; i < 200; i++) {
            assertThat(again.kelvin(Place.TOP, 431, i)).isEqualTo(one.kelvin(Place.TOP, 431, i));
            assertThat(again.hardness(Place.TOP, 720, i)).isEqualTo(one.hardness(Place.TOP, 720, i));
        }
        assertThat(other.kelvin(Place.TOP, 431, 0)).isNotEqualTo(one.kelvin(Place.TOP, 431, 0));
    }

    @Test
    void theDrawsKeepToTheBeliefsTheyAreDrawnFrom() {
        Ensemble ensemble = pin(2000, 3);
        for (Influence influence : Influence.values()) {
            Distribution belief = Priors.usual().of(influence);
            double[] q =
                    ensemble.weights().quantiles(ensemble.values(i -> ensemble.influence(influence, i)), 0.1, 0.5, 0.9);
            double near = 0.03 * (belief.high() - belief.low());
            assertThat(q[0]).as(influence.key()).isCloseTo(belief.low(), within(near));
            assertThat(q[1]).as(influence.key()).isCloseTo(belief.centre(), within(near));
            assertThat(q[2]).as(influence.key()).isCloseTo(belief.high(), within(near));
        }
    }

    /** Thousands of the same draws, each taken through the fast model by hand. */
    @Test
    void theBandIsThatOfHistoriesReckonedOneByOne() {
        Ensemble ensemble = pin(1500, 4);
        double[] byHand = new double[1500];
        SplittableRandom random = new SplittableRandom(99);
        for (int i = 0; i < byHand.length; i++) {
            byHand[i] = byHand(random);
        }
        Arrays.sort(byHand);
        Estimate band = ensemble.band(Place.TOP, 600);
        assertThat(band.low()).isCloseTo(byHand[150], within(3.0));
        assertThat(band.value()).isCloseTo(byHand[750], within(1.5));
        assertThat(band.high()).isCloseTo(byHand[1350], within(2.0));
    }

    private static double byHand(SplittableRandom random) {
        Priors p = Priors.usual();
        java.util.function.ToDoubleFunction<Influence> any =
                i -> p.of(i).at(org.strawblue.core.estimate.Normal.quantile(random.nextDouble()));
        Setting plate = new Setting.OnPlate(
                Trace.hold(563.15 + any.applyAsDouble(Influence.PLATE_OFFSET), 1),
                any.applyAsDouble(Influence.CONTACT_GAP),
                any.applyAsDouble(Influence.PART_EMISSIVITY),
                any.applyAsDouble(Influence.ROOM_SHARE),
                any.applyAsDouble(Influence.FILM_FACTOR),
                ROOM,
                false);
        Course course = new Course(PIN.shape(), ROOM, List.of(new Spell(plate, 720)));
        double slow = Math.exp(Reduced.timeError() * any.applyAsDouble(Influence.FAST_TIME));
        double at = new Reduced(slow).run(course, new double[] {600}).top()[0];
        return ROOM + (at - ROOM) * (1 + Reduced.levelError() * any.applyAsDouble(Influence.FAST_LEVEL));
    }

    @Test
    void theFullModelLiesWithinTheBandOfAllThatIsUnknown() {
        Trace full = Conduction.run(PIN)
                .value()
                .orElseThrow()
                .history()
                .at(Place.TOP)
                .orElseThrow();
        Ensemble ensemble = pin(500, 5);
        for (double t = 60; t <= 720; t += 60) {
            assertThat(ensemble.band(Place.TOP, t).band().contains(full.at(t)))
                    .as("%s s", t)
                    .isTrue();
        }
        Priors known = Priors.usual();
        for (Influence influence : Influence.values()) {
            if (influence != Influence.FAST_TIME && influence != Influence.FAST_LEVEL) {
                known = known.with(
                        influence,
                        Distribution.known(Priors.usual().of(influence).centre()),
                        Priors.usual().basis(influence));
            }
        }
        Ensemble sure = Ensemble.draw(PIN, O1, known, 500, 5);
        for (double t = 60; t <= 720; t += 60) {
            Estimate band = sure.band(Place.TOP, t);
            double half = Math.max(band.high() - band.value(), band.value() - band.low());
            assertThat(Math.abs(band.value() - full.at(t))).as("%s s", t).isLessThan(2 * half);
        }
    }

    /** Growth and tempering along the trace against the exact sums of the oxide and steel rooms. */
    @Test
    void filmAndHardnessAreThoseOfTheHistory() {
        Ensemble ensemble = pin(20, 6);
        double[] seconds = IntStream.rangeClosed(0, 720).asDoubleStream().toArray();
        for (int i = 0; i < 20; i++) {
            int draw = i;
            Trace trace = new Trace(
                    seconds,
                    Arrays.stream(seconds)
                            .map(t -> ensemble.kelvin(Place.TOP, t, draw))
                            .toArray());
            double grown = FilmGrowth.equivalentSeconds(trace, GrowthLaws.central())
                    * ensemble.influence(Influence.FILM_RATE, i);
            double exact = GrowthLaws.central().thickness(FilmGrowth.airFormed(), grown);
            assertThat(ensemble.film(Place.TOP, 720, i)).isCloseTo(exact, within(0.01 * exact));
            Temper temper =
                    Tempering.law(O1.get()).value().orElseThrow().exchange().equivalent(trace);
            assertThat(ensemble.seconds(Place.TOP, i)).isCloseTo(temper.seconds(), within(0.03 * temper.seconds()));
        }
    }

    /** The law's own interval, where the heat itself is known: a logged hour at 200 °C. */
    @Test
    void theHardnessOfAKnownHeatHasTheLawsInterval() {
        Course course = new Course(
                new PartShape.RoundBar(0.01, 0.05),
                473.15,
                List.of(new Spell(new Setting.AsLogged(Trace.hold(473.15, 3600)), 3600)));
        Priors sure = Priors.usual()
                .with(
                        Influence.SENSOR_OFFSET,
                        Distribution.known(0),
                        Priors.usual().basis(Influence.SENSOR_OFFSET))
                .with(
                        Influence.FAST_LEVEL,
                        Distribution.known(0),
                        Priors.usual().basis(Influence.FAST_LEVEL));
        Ensemble ensemble = Ensemble.draw(course, O1, sure, 4000, 7);
        Estimate law = Tempering.hardness(O1.get(), List.of(new Temper(473.15, 3600)))
                .value()
                .orElseThrow();
        double[] q = ensemble.weights()
                .quantiles(ensemble.values(i -> ensemble.hardness(Place.CORE, 3600, i)), 0.1, 0.5, 0.9);
        assertThat(q[1]).isCloseTo(law.value(), within(0.5));
        assertThat(q[2] - q[0])
                .isBetween(0.85 * law.band().width(), 1.4 * law.band().width());
        assertThat(ensemble.hardness(Place.CORE, 20, 0)).isNaN();
    }

    @Test
    void withoutASteelThereIsNoHardness() {
        Ensemble ensemble = Ensemble.draw(PIN, Optional.empty(), Priors.usual(), 50, 1);
        assertThat(ensemble.hardness(Place.TOP, 720, 0)).isNaN();
        assertThat(ensemble.asQuenched(0)).isNaN();
        assertThat(ensemble.weights().quantiles(ensemble.values(ensemble::asQuenched), 0.5)[0])
                .isNaN();
        assertThat(ensemble.bases()).isNotEmpty();
    }

    /** A bell on a bell: mean and spread of the posterior are known in closed form. */
    @Test
    void rareEvidenceIsNotLostWhenHistoriesAreDrawnCloser() {
        Ensemble ensemble = pin(2000, 8);
        double seen = 7;
        double error = 0.3;
        Likelihood bias = (e, i) -> {
            double off = (e.influence(Influence.CRAYON_BIAS, i) - seen) / error;
            return -off * off / 2;
        };
        double sd = 2.5 / org.strawblue.core.estimate.Normal.HALF_OF_80;
        double precision = 1 / (sd * sd) + 1 / (error * error);
        double mean = seen / (error * error) / precision;
        assertThat(ensemble.weights(bias).effective()).isLessThan(20);
        Ensemble closer = ensemble.refined(bias, 400, 6);
        Weights weights = closer.weights(bias);
        double[] values = closer.values(i -> closer.influence(Influence.CRAYON_BIAS, i));
        double[] q = weights.quantiles(values, 0.1, 0.5, 0.9);
        double half = org.strawblue.core.estimate.Normal.HALF_OF_80 / Math.sqrt(precision);
        assertThat(weights.effective()).isGreaterThan(400);
        assertThat(weights.mean(values)).isCloseTo(mean, within(0.1));
        assertThat(q[2] - q[0]).isCloseTo(2 * half, within(0.3 * half));
        double[] other = closer.values(i -> closer.influence(Influence.COLOUR_BIAS, i));
        assertThat(weights.quantiles(other, 0.5)[0]).isCloseTo(0, within(1.5));
    }

    @Test
    void weightsThatAreAllImpossibleCountAlike() {
        double none = Double.NEGATIVE_INFINITY;
        assertThat(Weights.of(new double[] {none, none}).of(0)).isEqualTo(0.5);
        Weights weights = Weights.of(new double[] {0, Math.log(3), none, Double.NaN});
        assertThat(weights.of(1)).isCloseTo(0.75, within(1e-12));
        assertThat(weights.effective()).isCloseTo(1.6, within(1e-12));
        assertThat(weights.chanceWithin(new double[] {1, 2, 3, 4}, new Band(Dimension.NUMBER, 1.5, 3)))
                .isCloseTo(0.75, within(1e-12));
        assertThat(weights.size()).isEqualTo(4);
        Estimate all = Weights.of(new double[101])
                .estimate(
                        Dimension.NUMBER,
                        IntStream.range(0, 101).asDoubleStream().toArray(),
                        List.of());
        assertThat(all.value()).isCloseTo(50, within(0.01));
        assertThat(all.low()).isCloseTo(9.6, within(0.1));
    }

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyCourseGivesABandAtEveryPlaceAndTime(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Course course = new Course(
                AnyCourse.shape(random),
                random.nextDouble(280, 400),
                List.of(
                        new Spell(AnyCourse.setting(random), random.nextDouble(5, 4000)),
                        new Spell(AnyCourse.setting(random), random.nextDouble(5, 4000))));
        Ensemble ensemble = Ensemble.draw(course, O1, Priors.usual(), 30, seed, 1, 2, 1e9);
        for (Place place : Place.values()) {
            double time = random.nextDouble(course.duration());
            Estimate band = ensemble.band(place, time);
            assertThat(band.low()).isBetween(200.0, AnyCourse.HOTTEST + 50);
            assertThat(ensemble.film(place, time, 3)).isGreaterThan(0).isFinite();
            assertThat(ensemble.peak(place, 3)).isGreaterThanOrEqualTo(ensemble.kelvin(place, 0, 3));
            double hrc = ensemble.hardness(place, time, 3);
            assertThat(Double.isNaN(hrc) || hrc > -20 && hrc < 75).isTrue();
        }
        assertThat(ensemble.refine((e, i) -> -Math.abs(e.peak(Place.TOP, i) - 500))
                        .size())
                .isEqualTo(30);
    }

    /** The edge lies between underside and top, at another height in each history; the surface is the top. */
    @Test
    void theEdgeLiesBetweenUndersideAndTop() {
        Ensemble pin = pin(400, 5);
        double[] heights = new double[400];
        for (int i = 0; i < 400; i++) {
            double under = pin.kelvin(Place.UNDERSIDE, 300, i);
            double top = pin.kelvin(Place.TOP, 300, i);
            heights[i] = (pin.kelvin(Place.EDGE, 300, i) - under) / (top - under);
            assertThat(pin.peak(Place.SURFACE, i)).isEqualTo(pin.peak(Place.TOP, i));
        }
        Arrays.sort(heights);
        for (int i = 0; i < 400; i++) {
            assertThat(heights[i]).isCloseTo((i + 0.5) / 400, within(0.02));
        }
    }

    /** A second hour at the same heat counts as two hours at it (definition of the exchange of time for temperature). */
    @Test
    void oneMoreTemperAddsToWhatWasHad() {
        Ensemble held = Ensemble.draw(held(500, 3600), O1, Priors.usual(), 50, 6);
        Ensemble twice = Ensemble.draw(held(500, 7200), O1, Priors.usual(), 50, 6);
        for (int i = 0; i < 50; i++) {
            double again = held.hardnessAgain(Place.TOP, held.peak(Place.TOP, i), 3600, i);
            assertThat(again).isCloseTo(twice.hardness(Place.TOP, 7200, i), within(0.1));
        }
    }

    private static Course held(double kelvin, double seconds) {
        Setting as = new Setting.AsLogged(Trace.hold(kelvin, seconds));
        return new Course(new PartShape.RoundBar(0.01, 0.05), ROOM, List.of(new Spell(as, seconds)));
    }
}
