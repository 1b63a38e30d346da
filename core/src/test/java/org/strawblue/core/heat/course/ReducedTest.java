package org.strawblue.core.heat.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.Trace;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.steel.Film;

class ReducedTest {

    private static final double ROOM = 293.15;
    private static final double ZERO = 273.15;

    /** A lumped body with a constant film, against the integral t = ρ V/S ∫ c dT/(h (T_e − T)) of any heat-transfer text. */
    @ParameterizedTest
    @CsvSource({"3, 40, 560", "12, 20, 560", "25, 10, 1200"})
    void aSmallBodyWithAConstantFilmFollowsTheLumpedLaw(double millimetres, double film, double around) {
        PartShape bar = new PartShape.RoundBar(millimetres / 1000, 0.2);
        double target = ROOM + (around - ROOM) * 0.9;
        double expected = 0;
        for (double t = ROOM; t < target; t += 0.05) {
            double depth = bar.section() / 8 / SteelProperties.conductivity(t);
            expected += SteelProperties.DENSITY
                    * bar.volumeOverSurface()
                    * SteelProperties.specificHeat(t + 0.025)
                    * 0.05
                    * (1 / film + depth)
                    / (around - t - 0.025);
        }
        Course course = course(bar, new Setting.InSand(around, film), 2 * expected);
        FastRun run = Reduced.plain().run(course, even(2 * expected, 2000));
        assertThat(when(run.seconds(), mean(run, film, bar, around), target))
                .isCloseTo(expected, within(expected * 0.004));
    }

    /** Long cylinder with surface convection at Bi 0.1: one-term series, ζ = 0.4417, C = 1.0246 (standard texts). */
    @Test
    void aCylinderAtASmallBiotNumberFollowsTheSeries() {
        double radius = 0.01;
        double start = 420;
        double around = 430;
        double k = SteelProperties.conductivity(around);
        double c = SteelProperties.specificHeat(425);
        double film = 0.1 * k / radius;
        double second = SteelProperties.DENSITY * c * radius * radius / k;
        Course course = new Course(
                new PartShape.RoundBar(2 * radius, 1000),
                start,
                List.of(new Spell(new Setting.InSand(around, film), 8 * second)));
        FastRun run = Reduced.plain().run(course, new double[] {3 * second, 6 * second});
        for (int i = 0; i < 2; i++) {
            double series = 1.0246 * Math.exp(-0.4417 * 0.4417 * run.seconds()[i] / second);
            assertThat((around - run.core()[i]) / (around - start)).isCloseTo(series, within(0.012));
        }
    }

    /**
     * Round bars on a plate at 290 °C, ε 0.2, φ 0.3: seconds to 250 °C in the middle and the end, from an independent
     * two-dimensional reckoning (finite volumes in polar co-ordinates, itself checked against finite elements).
     */
    @ParameterizedTest
    @CsvSource({
        "3, 5, 18.245, 288.14", "3, 80, 71.158, 283.23", "6, 20, 106.8, 280.93", "12, 5, 165.01, 280.20",
        "12, 20, 331.24, 272.86", "12, 80, 790.13, 259.78", "25, 5, 550.5, 274.70", "25, 20, 1125.4, 264.85",
        "40, 5, 1224.5, 270.34", "40, 20, 2589.1, 259.17"
    })
    void aBarOnAPlateKeepsUpWithATwoDimensionalReckoning(double d, double gap, double seconds, double end) {
        FastRun run = Reduced.plain().run(onPlate(d, gap, 290, false, 20_000), even(20_000, 20_000));
        assertThat(when(run.seconds(), run.core(), 250 + ZERO)).isCloseTo(seconds, within(seconds * 0.05));
        assertThat(run.core()[20_000] - ZERO).isCloseTo(end, within(1.2));
    }

    /** The same reckoning for Ø12, gap 20 µm: time to 270 °C at the underside and the top, bare and under a blanket. */
    @ParameterizedTest
    @CsvSource({
        "290, false, 558, 641",
        "350, false, 206, 220",
        "400, false, 142, 156",
        "290, true, 377, 390",
        "275, true, 633, 654"
    })
    void undersideAndTopArriveWhereTheReckoningHasThem(double plate, boolean cover, double under, double top) {
        FastRun run = Reduced.plain().run(onPlate(12, 20, plate, cover, 3600), even(3600, 3600));
        assertThat(when(run.seconds(), run.underside(), 270 + ZERO)).isCloseTo(under, within(under * 0.035));
        assertThat(when(run.seconds(), run.top(), 270 + ZERO)).isCloseTo(top, within(top * 0.06));
    }

    /** Flat 6 mm, gap 60 µm, plate 290 °C: 250 °C at 72 s, 270 °C at 101 s, settles at 286 °C; 12 mm: 149 s and 210 s. */
    @ParameterizedTest
    @CsvSource({"6, 72, 101", "12, 149, 210"})
    void aFlatOnAPlateKeepsUpWithASlab(double thickness, double to250, double to270) {
        Setting plate = Setting.OnPlate.steady(290 + ZERO, 60e-6, 0.2, 0.3, ROOM);
        Course course = course(new PartShape.Flat(thickness / 1000, 0.3, 0.3), plate, 1000);
        FastRun run = Reduced.plain().run(course, even(1000, 2000));
        assertThat(when(run.seconds(), run.top(), 250 + ZERO)).isCloseTo(to250, within(to250 * 0.08));
        assertThat(when(run.seconds(), run.top(), 270 + ZERO)).isCloseTo(to270, within(to270 * 0.1));
    }

    /** Minutes to within 10 K of 270 °C: still oven bright 63, oxidised 23, fan bright 25, fan oxidised 15 for Ø12. */
    @ParameterizedTest
    @CsvSource({"6, 0.15, 63", "6, 0.8, 23", "22, 0.15, 25", "22, 0.8, 15"})
    void anOvenTakesAsLongAsARadialReckoningHasIt(double film, double emissivity, double minutes) {
        Course course =
                course(new PartShape.RoundBar(0.012, 1000), Setting.InOven.steady(270 + ZERO, film, emissivity), 7200);
        FastRun run = Reduced.plain().run(course, even(7200, 3600));
        assertThat(when(run.seconds(), run.core(), 260 + ZERO) / 60).isCloseTo(minutes, within(0.06 * minutes + 0.5));
    }

    /** The oven's ripple reaches the part as A/√(1 + (2πτ/P)²): the textbook answer of a first-order lag. */
    @Test
    void aSwingIsDampedAsAFirstOrderLagDampsIt() {
        double film = 50;
        Setting oven = new Setting.InOven(500, 10, 300, 0, film, 0);
        PartShape bar = new PartShape.RoundBar(0.006, 1000);
        FastRun run = Reduced.plain().run(new Course(bar, 500, List.of(new Spell(oven, 6000))), even(6000, 6000));
        double lag = SteelProperties.DENSITY * SteelProperties.specificHeat(500) * bar.volumeOverSurface() / film;
        double expected = 10 / Math.hypot(1, 2 * Math.PI * lag / 300);
        double most = IntStream.range(4000, 6000)
                .mapToDouble(i -> run.core()[i])
                .max()
                .orElseThrow();
        assertThat(most - 500).isCloseTo(expected, within(0.03 * expected));
    }

    @Test
    void aLoggedPartIsWhereItsLogHasIt() {
        Trace log = new Trace(new double[] {0, 60, 600}, new double[] {300, 500, 540});
        Course course =
                new Course(new PartShape.RoundBar(0.01, 0.05), 300, List.of(new Spell(new Setting.AsLogged(log), 900)));
        FastRun run = Reduced.plain().run(course, new double[] {0, 30, 60, 330, 900});
        assertThat(run.at(Place.SURFACE)).containsExactly(300, 400, 500, 520, 540);
        assertThat(run.history().at(Place.CORE).orElseThrow().peak()).isEqualTo(540);
    }

    /** Energy: a slug of steel through the peak of its specific heat takes up what the table says it holds. */
    @Test
    void thePeakOfTheSpecificHeatIsNotSteppedOver() {
        double film = 100;
        PartShape bar = new PartShape.RoundBar(0.01, 1000);
        Course course = course(bar, new Setting.InSand(1400, film), 1500);
        FastRun run = Reduced.plain().run(course, even(1500, 15_000));
        double taken = 0;
        for (int i = 1; i <= 15_000; i++) {
            double surface = (run.top()[i] + run.top()[i - 1]) / 2;
            taken += film * (1400 - surface) * 0.1 / (SteelProperties.DENSITY * bar.volumeOverSurface());
        }
        double held = SteelProperties.enthalpy(ROOM, run.core()[15_000]);
        assertThat(taken).isCloseTo(held, within(0.003 * held));
    }

    @Test
    void whatLiesOutsideTheLimitsIsRefusedWithTheLimits() {
        assertThat(Reduced.findings(onPlate(12, 20, 290, false, 60))).isEmpty();
        assertThat(Reduced.findings(onPlate(200, 20, 290, false, 60)))
                .isNotEmpty()
                .allMatch(Finding.Stop.class::isInstance);
        Setting water = new Setting.InBath(new Film(new double[] {300}, new double[] {9000}), 1, 300);
        assertThat(Reduced.findings(course(new PartShape.SquareBar(0.02, 0.1), water, 10)))
                .singleElement()
                .isInstanceOf(Finding.Caution.class);
        Setting hot = new Setting.InFlame(4000, 100, 0.3, ROOM);
        assertThat(Reduced.findings(course(new PartShape.Tube(0.02, 0.01, 0.1), hot, 10)))
                .singleElement()
                .isInstanceOf(Finding.Stop.class);
    }

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    /** Whatever the part and the settings, a history is finite and stays between the coldest and the hottest thing about. */
    @ParameterizedTest
    @MethodSource("seeds")
    void noHistoryLeavesTheRangeOfItsSurroundings(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Course course = new Course(
                AnyCourse.shape(random),
                random.nextDouble(280, 1100),
                List.of(
                        new Spell(AnyCourse.setting(random), random.nextDouble(0.5, 4000)),
                        new Spell(AnyCourse.setting(random), random.nextDouble(0.5, 4000))));
        assertThat(Reduced.findings(course)).noneMatch(Finding.Stop.class::isInstance);
        FastRun run = Reduced.plain().run(course, even(course.duration(), 50));
        for (Place place : Place.values()) {
            for (double kelvin : run.at(place)) {
                assertThat(kelvin).isBetween(AnyCourse.COLDEST - 30, AnyCourse.HOTTEST + 30);
            }
        }
    }

    private static Course onPlate(double d, double gap, double plate, boolean cover, double seconds) {
        Setting.OnPlate bare = Setting.OnPlate.steady(plate + ZERO, gap * 1e-6, 0.2, 0.3, ROOM);
        return course(new PartShape.RoundBar(d / 1000, 1000), cover ? bare.withCover() : bare, seconds);
    }

    private static Course course(PartShape shape, Setting setting, double seconds) {
        return new Course(shape, ROOM, List.of(new Spell(setting, seconds)));
    }

    private static double[] even(double seconds, int steps) {
        return IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> seconds * i / steps)
                .toArray();
    }

    /** Mean temperature, from that of the surface. */
    private static double[] mean(FastRun run, double film, PartShape bar, double around) {
        return IntStream.range(0, run.top().length)
                .mapToDouble(i -> {
                    double depth = bar.section() / 8 / SteelProperties.conductivity(run.top()[i]);
                    return run.top()[i] - film * (around - run.top()[i]) * depth;
                })
                .toArray();
    }

    private static double when(double[] seconds, double[] kelvin, double target) {
        int i = 1;
        while (kelvin[i] < target) {
            i++;
        }
        return seconds[i] - (kelvin[i] - target) / (kelvin[i] - kelvin[i - 1]) * (seconds[i] - seconds[i - 1]);
    }
}
