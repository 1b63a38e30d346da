package org.strawblue.core.heat.conduction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.FastRun;
import org.strawblue.core.heat.course.Reduced;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.ThermalHistory;
import org.strawblue.core.history.Trace;
import org.strawblue.core.part.PartShape;

/** The fast model against the full one on a Latin hypercube of shapes, gaps, plates, covers and ovens. */
class FastAgainstFullTest {

    private static final int CASES = 60;
    private static final double ROOM = 293.15;

    @Test
    void theFastModelsErrorIsTheOneEveryHistoryCarries() {
        List<double[]> errors = new ArrayList<>();
        double[][] cube = cube(CASES, 7, 20);
        for (double[] u : cube) {
            errors.add(errors(course(u)));
        }
        double[] pace = errors.stream().mapToDouble(e -> e[0]).toArray();
        double[] level = errors.stream().mapToDouble(e -> e[1]).toArray();
        assertThat(rms(pace)).isBetween(0.8 * Reduced.timeError(), 1.2 * Reduced.timeError());
        assertThat(rms(level)).isBetween(0.8 * Reduced.levelError(), 1.2 * Reduced.levelError());
        assertThat(Arrays.stream(pace).map(Math::abs).max().orElseThrow()).isLessThan(3 * Reduced.timeError());
    }

    /** ln of the time to two thirds of the rise, fast over full, and the difference of the end over the rise. */
    private static double[] errors(Course course) {
        double[] times = IntStream.rangeClosed(0, 600)
                .mapToDouble(i -> course.duration() * i / 600)
                .toArray();
        FastRun fast = Reduced.plain().run(course, times);
        ThermalHistory history = Conduction.run(course).value().orElseThrow().history();
        Trace full = history.at(Place.TOP).or(() -> history.at(Place.SURFACE)).orElseThrow();
        double end = full.at(course.duration());
        double target = ROOM + (end - ROOM) * 2 / 3;
        double[] there = Arrays.stream(times).map(full::at).toArray();
        return new double[] {
            Math.log(when(times, fast.top(), target) / when(times, there, target)),
            (fast.top()[600] - end) / (end - ROOM)
        };
    }

    private static double when(double[] seconds, double[] kelvin, double target) {
        int i = 1;
        while (i < kelvin.length - 1 && kelvin[i] < target) {
            i++;
        }
        return seconds[i] - (kelvin[i] - target) / (kelvin[i] - kelvin[i - 1]) * (seconds[i] - seconds[i - 1]);
    }

    private static Course course(double[] u) {
        double section = 0.003 * Math.pow(10, u[0]);
        PartShape shape = switch ((int) (4 * u[1])) {
            case 0, 1 -> new PartShape.RoundBar(section, 1);
            case 2 -> new PartShape.Flat(section / 2, 5 * section, 1);
            default -> new PartShape.SquareBar(section, 1);
        };
        double gap = 8e-6 * Math.pow(60.0 / 8, u[2]);
        double hot = 480 + 170 * u[3];
        double emissivity = 0.08 + 0.7 * u[4] * u[4];
        double share = 0.1 + 0.4 * u[5];
        Setting.OnPlate bare = Setting.OnPlate.steady(hot, gap, emissivity, share, ROOM);
        Setting setting = u[6] < 0.4
                ? bare
                : u[6] < 0.7 ? bare.withCover() : Setting.InOven.steady(hot, 5 + 20 * share, emissivity);
        return new Course(shape, ROOM, List.of(new Spell(setting, 600 + 3000 * u[0])));
    }

    private static double[][] cube(int n, int dimensions, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[][] cube = new double[n][dimensions];
        for (int d = 0; d < dimensions; d++) {
            List<Integer> order = new ArrayList<>(IntStream.range(0, n).boxed().toList());
            for (int i = 0; i < n; i++) {
                cube[i][d] = (order.remove(random.nextInt(order.size())) + random.nextDouble()) / n;
            }
        }
        return cube;
    }

    private static double rms(double[] x) {
        return Math.sqrt(Arrays.stream(x).map(v -> v * v).average().orElse(0));
    }
}
