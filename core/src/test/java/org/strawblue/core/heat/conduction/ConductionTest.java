package org.strawblue.core.heat.conduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.CourseRun;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.Trace;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.steel.Film;

class ConductionTest {

    private static final double ROOM = 295.15;
    private static final double FROM = 300;
    private static final double TO = 302;

    private static CourseRun run(PartShape shape, double start, Setting setting, double seconds) {
        return Conduction.run(new Course(shape, start, List.of(new Spell(setting, seconds))))
                .value()
                .orElseThrow();
    }

    private static Setting bath(double film, double kelvin) {
        return new Setting.InBath(new Film(new double[] {200, 1500}, new double[] {film, film}), 1, kelvin);
    }

    private static double last(CourseRun run, Place place) {
        Trace trace = run.history().at(place).orElseThrow();
        return trace.kelvin(trace.size() - 1);
    }

    /**
     * Infinite cylinder, one-term series: θ = C₁ exp(−ζ₁² Fo) J₀(ζ₁ r/R), ζ₁ and C₁ as tabulated by Bergman and others, Fundamentals
     * of Heat and Mass Transfer, table 5.1; so small a step in temperature that properties are constant.
     */
    @ParameterizedTest
    @CsvSource({"0.1, 0.4417, 1.0246", "1.0, 1.2558, 1.2071", "10, 2.1795, 1.5677"})
    void centreOfLongCylinderFollowsSeries(double biot, double zeta, double c) {
        double radius = 0.01;
        double k = SteelProperties.conductivity((FROM + TO) / 2);
        double diffusivity = k / SteelProperties.DENSITY / SteelProperties.specificHeat((FROM + TO) / 2);
        double seconds = 0.5 * radius * radius / diffusivity;
        CourseRun run = run(new PartShape.RoundBar(2 * radius, 100), FROM, bath(biot * k / radius, TO), seconds);
        double left = (TO - last(run, Place.CORE)) / (TO - FROM);
        assertThat(left).isCloseTo(c * Math.exp(-zeta * zeta * 0.5), within(0.004));
    }

    /** Plane wall: the same source, table 5.1; a wide flat in a bath. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.3111, 1.0161", "1.0, 0.8603, 1.1191", "10, 1.4289, 1.2620"})
    void middleOfPlateFollowsSeries(double biot, double zeta, double c) {
        double half = 0.004;
        double k = SteelProperties.conductivity((FROM + TO) / 2);
        double diffusivity = k / SteelProperties.DENSITY / SteelProperties.specificHeat((FROM + TO) / 2);
        double seconds = 0.7 * half * half / diffusivity;
        CourseRun run = run(new PartShape.Flat(2 * half, 1, 100), FROM, bath(biot * k / half, TO), seconds);
        double left = (TO - last(run, Place.CORE)) / (TO - FROM);
        // the table's time, at a node half a row off the middle
        assertThat(left).isCloseTo(c * Math.exp(-zeta * zeta * 0.7), within(0.008));
    }

    /** Semi-infinite solid, constant film: Carslaw and Jaeger, Conduction of Heat in Solids, section 2.7; early in a thick bar. */
    @Test
    void skinOfThickBarFollowsSemiInfiniteSolid() {
        double k = SteelProperties.conductivity((FROM + TO) / 2);
        double diffusivity = k / SteelProperties.DENSITY / SteelProperties.specificHeat((FROM + TO) / 2);
        double film = 5000;
        double seconds = 0.5;
        double x = film * Math.sqrt(diffusivity * seconds) / k;
        // 1 − exp(x²) erfc(x)
        double expected = 1 - Math.exp(x * x) * org.hipparchus.special.Erf.erfc(x);
        CourseRun run = run(new PartShape.RoundBar(0.09, 100), FROM, bath(film, TO), seconds);
        assertThat((last(run, Place.SURFACE) - FROM) / (TO - FROM)).isCloseTo(expected, within(0.01));
    }

    /** Lumped limit, textbook: θ = exp(−h S t / (ρ c V)). */
    @Test
    void thinBarInWeakFilmIsLumped() {
        double film = 10;
        double seconds = 200;
        double c = SteelProperties.specificHeat((FROM + TO) / 2);
        CourseRun run = run(new PartShape.RoundBar(0.003, 0.06), FROM, bath(film, TO), seconds);
        double area = 2 / 0.0015 + 4 / 0.06 / 2;
        double expected = Math.exp(-film * area * seconds / SteelProperties.DENSITY / c);
        assertThat((TO - last(run, Place.CORE)) / (TO - FROM)).isCloseTo(expected, within(0.01));
    }

    /** Heat that comes in is found again, through the peak of the change at 735 °C too. */
    @Test
    void energyBalanceClosesThroughTransformation() {
        CourseRun run = run(new PartShape.RoundBar(0.012, 0.06), ROOM, Setting.InOven.steady(1123, 10, 0.8), 2400);
        assertThat(run.energy().error()).isLessThan(1e-3);
        double expected = SteelProperties.enthalpy(ROOM, last(run, Place.CORE))
                * SteelProperties.DENSITY
                * Math.PI
                * 0.006
                * 0.006
                * 0.06;
        assertThat(run.energy().stored()).isCloseTo(expected, within(expected * 0.003));
    }

    /** The method is of order 4: a tenth of the tolerance is worth about a tenth of the error. */
    @Test
    void finerToleranceComesCloser() {
        Setting.OnPlate on = Setting.OnPlate.steady(563.15, 2e-5, 0.2, 0.3, ROOM);
        Course course = new Course(new PartShape.RoundBar(0.012, 1), ROOM, List.of(new Spell(on, 600)));
        double exact = last(Conduction.run(course, Fineness.USUAL, 1e-6).value().orElseThrow(), Place.TOP);
        double coarse = Math.abs(
                last(Conduction.run(course, Fineness.USUAL, 1e-1).value().orElseThrow(), Place.TOP) - exact);
        double fine = Math.abs(
                last(Conduction.run(course, Fineness.USUAL, 1e-3).value().orElseThrow(), Place.TOP) - exact);
        assertThat(fine).isLessThan(0.02).isLessThan(coarse + 1e-9);
    }

    /** A few long steps on a cold bar: what is read between their ends is no wilder than the ends. */
    @Test
    void readsBetweenStepsAsWellAsAtTheirEnds() {
        Setting.OnPlate on = Setting.OnPlate.steady(563.15, 2e-5, 0.2, 0.3, ROOM);
        Course course = new Course(new PartShape.RoundBar(0.012, 1), ROOM, List.of(new Spell(on, 600)));
        CourseRun exact = Conduction.run(course, Fineness.USUAL, 1e-6).value().orElseThrow();
        CourseRun coarse = Conduction.run(course, Fineness.USUAL, 3e-2).value().orElseThrow();
        assertThat(coarse.steps()).isLessThan(exact.steps() / 3);
        for (Place place : List.of(Place.UNDERSIDE, Place.TOP)) {
            Trace fine = exact.history().at(place).orElseThrow();
            Trace few = coarse.history().at(place).orElseThrow();
            for (int second = 1; second <= 600; second++) {
                assertThat(few.at(second)).isCloseTo(fine.at(second), within(0.15));
            }
        }
    }

    @Test
    void coverBringsBarCloserToPlate() {
        Setting.OnPlate bare = Setting.OnPlate.steady(563.15, 2e-5, 0.2, 0.3, ROOM);
        PartShape bar = new PartShape.RoundBar(0.012, 0.1);
        assertThat(last(run(bar, ROOM, bare.withCover(), 3600), Place.TOP))
                .isGreaterThan(last(run(bar, ROOM, bare, 3600), Place.TOP) + 5);
    }

    /** Common practice: heat left in the shank of a chisel dipped at its edge runs back to the edge. */
    @Test
    void heatRunsBackToDippedEdge() {
        Film water = new Film(new double[] {200, 1500}, new double[] {8000, 8000});
        Setting room = new Setting.InAir(ROOM, 0.7, 1);
        Setting dip = new Setting.Partly(new Setting.InBath(water, 1, ROOM), 0, 0.02, room);
        Course course =
                new Course(new PartShape.SquareBar(0.01, 0.08), 1073, List.of(new Spell(dip, 6), new Spell(room, 60)));
        CourseRun run = Conduction.run(course).value().orElseThrow();
        Trace edge = run.history().at(Place.EDGE).orElseThrow();
        assertThat(edge.at(6)).isLessThan(400);
        assertThat(edge.at(30)).isGreaterThan(480);
        assertThat(run.energy().error()).isLessThan(1e-3);
    }

    /** Steel quenched from above its change keeps the heat of the change for later: the answer says that it does not. */
    @ParameterizedTest
    @CsvSource({"1073, true", "900, false"})
    void coolingFromAboveTheChangeComesWithACaution(double start, boolean told) {
        Answer<CourseRun> answer = Conduction.run(
                new Course(new PartShape.RoundBar(0.012, 0.1), start, List.of(new Spell(bath(1000, 330), 10))));
        assertThat(answer.value()).isPresent();
        assertThat(answer.findings()).hasSize(told ? 1 : 0);
    }

    @Test
    void plateSagsUnderColdBar() {
        Setting.OnPlate on = Setting.OnPlate.steady(563.15, 2e-5, 0.2, 0.3, ROOM);
        PartShape bar = new PartShape.RoundBar(0.02, 0.1);
        double firm = last(run(bar, ROOM, on, 300), Place.TOP);
        CourseRun sagging = run(bar, ROOM, new Setting.OnSaggingPlate(on, 400, 2), 300);
        assertThat(last(sagging, Place.TOP)).isLessThan(firm - 3);
        assertThat(sagging.energy().error()).isLessThan(1e-3);
    }

    @Test
    void outsideItsRangeItSaysWhatWasAskedAndBothLimits() {
        Answer<CourseRun> answer = Conduction.run(new Course(
                new PartShape.RoundBar(0.2, 1), ROOM, List.of(new Spell(Setting.InOven.steady(500, 6, 0.2), 60))));
        assertThat(answer.value()).isEmpty();
        assertThat(answer.findings().get(0).what().amounts()).hasSize(1);
        assertThat(answer.findings().get(0).why().amounts()).hasSize(2);
    }

    @Test
    void whatCannotBePutTogetherIsAFinding() {
        Setting plate = Setting.OnPlate.steady(563.15, 2e-5, 0.2, 0.3, ROOM);
        Setting air = new Setting.InAir(ROOM, 0.3, 1);
        Setting log = new Setting.AsLogged(Trace.hold(500, 60));
        PartShape bar = new PartShape.RoundBar(0.012, 0.06);
        for (List<Spell> spells : List.of(
                List.of(new Spell(log, 60), new Spell(air, 60)),
                List.of(new Spell(new Setting.Partly(plate, 0, 0.01, air), 60)),
                List.of(new Spell(new Setting.Partly(air, 0, 0.01, log), 60)))) {
            Answer<CourseRun> answer = Conduction.run(new Course(bar, ROOM, spells));
            assertThat(answer.value()).isEmpty();
            assertThat(answer.stopped()).isTrue();
        }
    }

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    /** Whatever is asked within or without the range: an answer between the coldest and the hottest there is, or a finding. */
    @ParameterizedTest
    @MethodSource("seeds")
    void noCourseEndsInAnException(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double size = Math.pow(10, -3.5 + 2.8 * random.nextDouble());
        PartShape shape = switch (random.nextInt(5)) {
            case 0 -> new PartShape.RoundBar(size, size * (0.5 + 10 * random.nextDouble()));
            case 1 -> new PartShape.SquareBar(size, size * 5);
            case 2 -> new PartShape.Flat(size, size * (1 + 10 * random.nextDouble()), size * 12);
            case 3 -> new PartShape.Tube(size, size * (0.05 + 0.9 * random.nextDouble()), size * 2);
            default ->
                new PartShape.SteppedPin(List.of(
                        new PartShape.SteppedPin.Piece(size, size * 2),
                        new PartShape.SteppedPin.Piece(size * 2, size * 3)));
        };
        double hot = 300 + 1400 * random.nextDouble();
        Setting.OnPlate plate = Setting.OnPlate.steady(
                hot, Math.pow(10, -6 + 2 * random.nextDouble()), random.nextDouble(), random.nextDouble(), ROOM);
        Setting setting = switch (random.nextInt(7)) {
            case 0 -> plate;
            case 1 -> plate.withCover();
            case 2 -> new Setting.InOven(hot, 20, 300, 0.3, 8, random.nextDouble());
            case 3 -> bath(20000 * random.nextDouble() + 1, 300);
            case 4 -> new Setting.InFlame(1900, 150, 0.8, ROOM);
            case 5 ->
                new Setting.Partly(new Setting.InFlame(1900, 150, 0.8, ROOM), 0, size, new Setting.InAir(ROOM, 0.5, 1));
            default -> new Setting.OnSaggingPlate(plate, 300, 3);
        };
        double start = 280 + 900 * random.nextDouble();
        double seconds = Math.pow(10, 5 * random.nextDouble());
        Answer<CourseRun> answer = Conduction.run(new Course(
                shape, start, List.of(new Spell(setting, seconds), new Spell(new Setting.InAir(ROOM, 0.3, 1), 30))));
        if (answer.value().isEmpty()) {
            assertThat(answer.findings()).isNotEmpty();
            return;
        }
        CourseRun run = answer.value().get();
        assertThat(run.energy().error())
                .as(
                        "%s %s start %.0f for %.1f s: %s, %d steps",
                        shape, setting, start, seconds, run.energy(), run.steps())
                .isLessThan(0.005);
        for (Trace trace : run.history().traces().values()) {
            assertThat(trace.peak()).isBetween(280.0, Math.max(2300, hot));
        }
    }
}
