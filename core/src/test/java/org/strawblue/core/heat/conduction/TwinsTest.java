package org.strawblue.core.heat.conduction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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

    static Stream<Arguments> kept() {
        return TwinCases.all().stream()
                .flatMap(c -> Stream.of("scipy", "calculix").filter(c::has).map(twin -> Arguments.of(c, twin)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("kept")
    void agreesWithTwinAtEveryTimeKept(TwinCases.Case kase, String twin) {
        CourseRun run = Conduction.run(kase.course()).value().orElseThrow();
        Difference difference = difference(kase, twin, run.history());

        assertThat(run.energy().error()).isLessThan(0.001);
        if (kase.kind().equals("bath")) {
            // hundreds of kelvin a second: what counts is when
            assertThat(difference.time()).isLessThan(0.015);
        } else {
            assertThat(difference.kelvin()).isLessThan(1);
            // on so thick a bar the first minute's underside is the mesh's weakest spot, 0.3 K of 60
            assertThat(difference.time()).isLessThan(kase.id().equals("bar40-covered") ? 0.025 : 0.015);
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

    /** By what share of the time we are early or late at the temperature the twin has; 0 within the twin's own mesh error. */
    private static double timeShift(Trace trace, double seconds, double celsius) {
        double off = Math.abs(at(trace, seconds) - celsius);
        double step = seconds / 100;
        double slope = Math.abs(at(trace, seconds + step) - at(trace, seconds - step)) / (2 * step);
        return off < 0.15 ? 0 : off / slope / seconds;
    }
}
