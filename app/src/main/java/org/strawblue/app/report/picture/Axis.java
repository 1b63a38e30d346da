package org.strawblue.app.report.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight scale from values to places on the sheet.
 *
 * @param from value at {@code start}
 * @param to value at {@code end}
 */
record Axis(double from, double to, double start, double end) {

    double at(double value) {
        return start + (value - from) / (to - from) * (end - start);
    }

    /** As {@link #at}, but not beyond the ends. */
    double within(double value) {
        return at(Math.max(Math.min(from, to), Math.min(Math.max(from, to), value)));
    }

    /** Round values at most {@code count} in number: 1, 2 or 5 × 10ⁿ apart. */
    List<Double> ticks(int count) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        double step = Ticks.step((high - low) / count);
        List<Double> ticks = new ArrayList<>();
        for (double k = Math.ceil(low / step - 1e-9); k * step <= high + 1e-9 * step; k++) {
            ticks.add(k * step);
        }
        return ticks;
    }
}
