package org.strawblue.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.strawblue.core.colour.Light;
import org.strawblue.core.heat.conduction.Conduction;
import org.strawblue.core.heat.conduction.Fineness;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.CourseRun;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.ThermalHistory;
import org.strawblue.core.history.Trace;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.watch.TemperWatch;

/**
 * Time of conduction once warm: the bare 12 mm bar on a plate at 290 °C of {@code verification/heat/cases.csv}.
 *
 * <p>{@code solve SECTORS RINGS SECONDS TOLERANCE...}: one line for each tolerance [K]: tolerance, shortest time of a solve [s], its
 * energy balance's error, then underside, top and core [°C] at each of {@link #TIMES}. {@code places}: number of places
 * and seconds for hardness and colour along the history of so many.
 */
public final class HeatSpeed {

    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static final double ZERO = 273.15;
    private static final double[] TIMES = {60, 120, 300, 600, 1000};
    private static final double WARM = 4;
    private static final int ROUNDS = 31;
    private static final int READINGS = 120;

    private HeatSpeed() {}

    public static void main(String[] args) {
        if (args[0].equals("places")) {
            places();
            return;
        }
        Fineness mesh = new Fineness(Integer.parseInt(args[1]), Integer.parseInt(args[2]), 80);
        double seconds = Double.parseDouble(args[3]);
        for (String tolerance : Arrays.asList(args).subList(4, args.length)) {
            double kelvin = Double.parseDouble(tolerance);
            CourseRun run = solve(mesh, seconds, kelvin);
            double time = best(() -> solve(mesh, seconds, kelvin));
            StringBuilder line = new StringBuilder(String.format(
                    Locale.ROOT, "%g,%.6f,%.2e", kelvin, time, run.energy().error()));
            for (double at : TIMES) {
                for (Place place : List.of(Place.UNDERSIDE, Place.TOP, Place.CORE)) {
                    line.append(String.format(
                            Locale.ROOT,
                            ",%.5f",
                            run.history().at(place).orElseThrow().at(at) - ZERO));
                }
            }
            System.out.println(line);
        }
    }

    private static CourseRun solve(Fineness mesh, double seconds, double tolerance) {
        Setting plate = Setting.OnPlate.steady(290 + ZERO, 20e-6, 0.2, 0.3, 22 + ZERO);
        Course course = new Course(new PartShape.RoundBar(0.012, 1), 22 + ZERO, List.of(new Spell(plate, seconds)));
        return Conduction.run(course, mesh, tolerance).value().orElseThrow();
    }

    private static void places() {
        ThermalHistory whole = solve(Fineness.USUAL, 1000, 0.01).history();
        List<Map.Entry<Place, Trace>> traces = List.copyOf(whole.traces().entrySet());
        Steel steel = Steel.ofGrade("O1");
        for (int n = 1; n <= traces.size(); n++) {
            ThermalHistory some = new ThermalHistory(traces.subList(0, n).stream()
                    .collect(java.util.stream.Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
            double time = best(() ->
                    TemperWatch.of(some, steel, Light.DAYLIGHT, 0.5).value().orElseThrow().places().values().stream()
                            .mapToInt(p -> p.curve(READINGS).size())
                            .sum());
            System.out.printf(Locale.ROOT, "%d,%.6f%n", n, time);
        }
    }

    /** The shortest of the rounds [s], after it has been done for {@link #WARM} seconds. */
    private static double best(Supplier<?> work) {
        double spent = 0;
        while (spent < WARM) {
            spent += seconds(work);
        }
        double[] rounds = new double[ROUNDS];
        Arrays.setAll(rounds, i -> seconds(work));
        Arrays.sort(rounds);
        return rounds[0];
    }

    /** Of the processor, not of the clock: what else the machine does counts little. */
    private static double seconds(Supplier<?> work) {
        long start = CLOCK.getCurrentThreadCpuTime();
        if (work.get().hashCode() == 0) {
            throw new IllegalStateException("nothing done");
        }
        return (CLOCK.getCurrentThreadCpuTime() - start) / 1e9;
    }
}
