package org.strawblue.core.evidence.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.history.Trace;

/**
 * The part of an oven's log in which it goes about its mean: warming up, its first overshoot and cooling down cut away.
 *
 * @param from first point that counts
 * @param to last point that counts
 * @param level temperature [K] below which it was half of the hot time
 * @param half half the range [K] in which it was nine tenths of the settled time
 */
record Settled(Trace trace, int from, int to, double level, double half) {

    /** Share of the readings at either end that may be stray and does not make the swing [1]. */
    private static final double TAIL = 0.05;

    private static final double NEAR = Figures.kelvin("near-peak");

    /** Absent where fewer than three points are left. */
    static Optional<Settled> of(Trace trace) {
        double hot = trace.peak() - NEAR;
        double level = share(trace, 0, trace.size() - 1, hot, 0.5);
        int first = 0;
        while (first < trace.size() && trace.kelvin(first) < level) {
            first++;
        }
        boolean warmed = trace.kelvin(0) < hot;
        first = warmed ? first : 0;
        int last = lastOver(trace, hot);
        if (last - first < 3) {
            return Optional.empty();
        }
        Settled rough = about(trace, first, last, level);
        Settled calm = warmed ? rough.withoutOvershoot() : rough;
        return Optional.of(calm.withoutTail()).filter(s -> s.to - s.from >= 2);
    }

    private static Settled about(Trace trace, int from, int to, double level) {
        double low = share(trace, from, to, 0, TAIL);
        double high = share(trace, from, to, 0, 1 - TAIL);
        return new Settled(trace, from, to, level, (high - low) / 2);
    }

    private static int lastOver(Trace trace, double hot) {
        int last = trace.size() - 1;
        while (last > 0 && trace.kelvin(last) < hot) {
            last--;
        }
        return last;
    }

    /** From the first fall through the mean on, where enough swings are left without what lies before. */
    private Settled withoutOvershoot() {
        List<Integer> falls = turns(false);
        return falls.size() >= 3 ? about(trace, falls.get(0), to, level) : this;
    }

    /** A last fall deeper than every trough is the oven being switched off, or its door opened. */
    private Settled withoutTail() {
        int cross = to;
        while (cross > from && (trace.kelvin(cross) - level) * (trace.kelvin(to) - level) > 0) {
            cross--;
        }
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = from; i <= cross; i++) {
            lowest = Math.min(lowest, trace.kelvin(i));
        }
        boolean off = trace.kelvin(to) < Math.min(lowest, level) - Math.max(Figures.kelvin("tail"), half / 2);
        return off ? about(trace, from, cross, level) : this;
    }

    /** How far from the level [K] counts as being on one side of it. */
    private double reach() {
        return Math.max(Figures.kelvin("switch-least"), Figures.number("switch-share") * half);
    }

    /** Points at which it comes to be clearly above the level, having been clearly below; or the other way round. */
    List<Integer> turns(boolean up) {
        List<Integer> turns = new ArrayList<>();
        double reach = reach();
        int side = 0;
        for (int i = from; i <= to; i++) {
            double off = trace.kelvin(i) - level;
            int now = off > reach ? 1 : off < -reach ? -1 : side;
            if (side != 0 && now != side && (now > 0) == up) {
                turns.add(i);
            }
            side = now;
        }
        return turns;
    }

    double seconds() {
        return trace.second(to) - trace.second(from);
    }

    /** A step [s] longer than this is a gap in the log. */
    double gap() {
        double[] steps = new double[to - from];
        for (int i = from; i < to; i++) {
            steps[i - from] = trace.second(i + 1) - trace.second(i);
        }
        Arrays.sort(steps);
        return Math.max(Figures.number("gap-steps") * steps[steps.length / 2], Figures.seconds("gap-least"));
    }

    /** Temperature [K] below which it was a share of the time above {@code hot}. */
    private static double share(Trace trace, int from, int to, double hot, double share) {
        List<double[]> times = new ArrayList<>();
        double all = 0;
        for (int i = from; i < to; i++) {
            double kelvin = (trace.kelvin(i) + trace.kelvin(i + 1)) / 2;
            if (kelvin >= hot) {
                double time = trace.second(i + 1) - trace.second(i);
                times.add(new double[] {kelvin, time});
                all += time;
            }
        }
        times.sort((a, b) -> Double.compare(a[0], b[0]));
        double passed = 0;
        for (double[] time : times) {
            passed += time[1];
            if (passed >= share * all) {
                return time[0];
            }
        }
        return trace.peak();
    }
}
