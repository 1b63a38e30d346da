package org.strawblue.core.evidence.learn;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.history.Trace;

/**
 * The whole swings of a settled log, gaps left out.
 *
 * @param all each swing
 * @param whole the settled log as if it were one swing
 */
record Swings(List<Swing> all, Swing whole) {

    /**
     * @param start [s]
     * @param seconds how long it took
     * @param mean [K]
     * @param half half of its range [K]
     * @param readings points in it
     * @param gap share of its time of which the log says nothing
     */
    record Swing(double start, double seconds, double mean, double half, int readings, double gap) {}

    static Swings of(Settled settled) {
        List<Swing> all = new ArrayList<>();
        List<Integer> ups = settled.turns(true);
        List<Integer> downs = settled.turns(false);
        List<Integer> turns = downs.size() > ups.size() ? downs : ups;
        for (int k = 1; k < turns.size(); k++) {
            Swing swing = swing(settled, turns.get(k - 1), turns.get(k));
            if (swing.gap() <= Figures.number("gap-share")) {
                all.add(swing);
            }
        }
        return new Swings(List.copyOf(all), swing(settled, settled.from(), settled.to()));
    }

    private static Swing swing(Settled settled, int from, int to) {
        Trace t = settled.trace();
        double longest = settled.gap();
        double sum = 0;
        double time = 0;
        double low = t.kelvin(from);
        double high = low;
        for (int i = from; i < to; i++) {
            double step = t.second(i + 1) - t.second(i);
            if (step <= longest) {
                sum += step * (t.kelvin(i) + t.kelvin(i + 1)) / 2;
                time += step;
            }
            low = Math.min(low, t.kelvin(i + 1));
            high = Math.max(high, t.kelvin(i + 1));
        }
        double seconds = t.second(to) - t.second(from);
        double mean = time > 0 ? sum / time : (low + high) / 2;
        return new Swing(t.second(from), seconds, mean, (high - low) / 2, to - from, 1 - time / seconds);
    }
}
