package org.strawblue.core.heat.conduction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.heat.course.CourseRun;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.ThermalHistory;
import org.strawblue.core.history.Trace;

/** Our solve against what general-purpose solvers made of the same cases: SciPy's BDF, CalculiX (verification/heat). */
class TwinsTest {

    private static final double ZERO = 273.15;

    /** From here on a difference tells more about either solver's time than about its mesh [K]. */
    private static final double SHOWS = 0.15;

    static Stream<Arguments> kept() {
        return TwinCases.all().stream()
                .flatMap(c -> Stream.of("scipy", "calculix").map(twin -> Arguments.of(c, twin)));
    }

    /**
     * Every minute (quenches: twenty moments), underside, top and core: 1 K, 1.5 % of the time gone by; heat closed to 0.1 %. A quench falls by
     * up to hundreds of kelvin a second, so there 3 K are allowed, and what counts is when it comes to each temperature.
     */
    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("kept")
    void agreesWithBothTwinsAtEveryTimeKept(TwinCases.Case kase, String twin) {
        CourseRun run = Conduction.run(kase.course()).value().orElseThrow();
        Difference difference = difference(kase, twin, run.history());
        System.out.printf(
                Locale.ROOT,
                "ours and %-8s %-14s %6.3f K %6.2f %% in time, heat closes to %.4f %%%n",
                twin,
                kase.id(),
                difference.kelvin(),
                100 * difference.time(),
                100 * run.energy().error());

        assertThat(run.energy().error()).isLessThan(0.001);
        assertThat(difference.kelvin()).isLessThan(kase.kind().equals("bath") ? 3 : 1);
        // on so thick a bar the first minute's underside is the mesh's weakest spot, 0.3 K of 60
        assertThat(difference.time()).isLessThan(kase.id().equals("bar40-covered") ? 0.025 : 0.015);
    }

    /** The twins do not share a solver, a mesh or a line of ours: they must agree with each other as we do with them. */
    @Test
    void everyCaseHasTheSameMomentsFromBoth() {
        for (TwinCases.Case kase : TwinCases.all()) {
            List<double[]> scipy = kase.kept("scipy");
            List<double[]> calculix = kase.kept("calculix");
            assertThat(scipy.stream().map(row -> row[0]))
                    .as(kase.id())
                    .hasSizeGreaterThan(10)
                    .containsExactlyElementsOf(
                            calculix.stream().map(row -> row[0]).toList());
        }
    }

    /** A twin that leaves out the line of contact's share of the heat must not pass. */
    @Test
    void wouldTellAnotherGap() {
        TwinCases.Case bar = TwinCases.all().get(0);
        TwinCases.Case wrong = bar.with("gap", "30");
        Difference difference = difference(
                bar,
                "scipy",
                Conduction.run(wrong.course()).value().orElseThrow().history());
        assertThat(difference.kelvin()).isGreaterThan(5);
    }

    /** The greatest difference from a twin: [K], and as a share of the time that passed. */
    private record Difference(double kelvin, double time) {}

    private static Difference difference(TwinCases.Case kase, String twin, ThermalHistory history) {
        List<Trace> places = List.of(
                history.at(Place.UNDERSIDE).or(() -> history.at(Place.SURFACE)).orElseThrow(),
                history.at(Place.TOP).or(() -> history.at(Place.SURFACE)).orElseThrow(),
                history.at(Place.CORE).orElseThrow());
        double kelvin = 0;
        double time = 0;
        for (double[] row : kase.kept(twin)) {
            // at the very beginning a surface temperature is a matter of definition
            for (int place = 0; row[0] > 0 && place < places.size() && place + 1 < row.length; place++) {
                kelvin = Math.max(kelvin, Math.abs(at(places.get(place), row[0]) - row[place + 1]));
                time = Math.max(time, timeShift(places.get(place), row[0], row[place + 1]));
            }
        }
        return new Difference(kelvin, time);
    }

    private static double at(Trace trace, double seconds) {
        return trace.at(seconds) - ZERO;
    }

    /** By what share of the time we are early or late at the temperature the twin has; 0 where the difference does not show. */
    private static double timeShift(Trace trace, double seconds, double celsius) {
        double off = Math.abs(at(trace, seconds) - celsius);
        double step = seconds / 100;
        double slope = Math.abs(at(trace, seconds + step) - at(trace, seconds - step)) / (2 * step);
        return off < SHOWS ? 0 : off / slope / seconds;
    }
}
