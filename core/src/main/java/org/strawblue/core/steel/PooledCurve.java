package org.strawblue.core.steel;

import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

/**
 * Several published curves of one grade made into one: hardness against the Hollomon–Jaffe parameter, straight lines
 * between the points of each sheet, each sheet first moved by its own constant so that the curve does not jump where a
 * sheet ends. Nothing is carried beyond the points, nor across a gap too wide to bridge.
 */
final class PooledCurve {

    private static final int STEPS = 1 << 9;
    private static final int ROUNDS = 1 << 4;

    private final double first;
    private final double step;
    private final double[] hrc;

    private PooledCurve(double first, double step, double[] hrc) {
        this.first = first;
        this.step = step;
        this.hrc = hrc;
    }

    static PooledCurve of(List<TemperingSheet> sheets, HollomonJaffe exchange) {
        List<Line> lines = sheets.stream().map(s -> Line.of(s, exchange)).toList();
        double low = lines.stream().mapToDouble(Line::first).min().orElseThrow();
        double high = lines.stream().mapToDouble(Line::last).max().orElseThrow();
        double step = (high - low) / STEPS;
        double[][] values = new double[lines.size()][STEPS + 1];
        for (int s = 0; s < values.length; s++) {
            for (int i = 0; i <= STEPS; i++) {
                values[s][i] = lines.get(s).at(i == STEPS ? high : low + i * step);
            }
        }
        return new PooledCurve(low, step, pool(values));
    }

    double first() {
        return first;
    }

    double last() {
        return first + step * STEPS;
    }

    /** Hardness [HRC] at this parameter [K]; NaN where no sheet tells. */
    double at(double parameter) {
        double place = (parameter - first) / step;
        // rounding must not lose the end points
        int i = (int) Math.min(Math.floor(place + Math.ulp((double) STEPS)), STEPS - 1);
        if (place < -1 / (double) STEPS || place > STEPS + 1 / (double) STEPS) {
            return Double.NaN;
        }
        double part = Math.max(0, Math.min(1, place - Math.max(0, i)));
        return hrc[Math.max(0, i)] * (1 - part) + hrc[Math.max(0, i) + 1] * part;
    }

    private static double[] pool(double[][] values) {
        double[] moved = new double[values.length];
        double[] mean = new double[0];
        for (int round = 0; round < ROUNDS; round++) {
            mean = mean(values, moved);
            for (int s = 0; s < values.length; s++) {
                moved[s] = departure(values[s], mean);
            }
            double middle = Arrays.stream(moved).average().orElse(0);
            for (int s = 0; s < moved.length; s++) {
                moved[s] -= middle;
            }
        }
        return mean;
    }

    private static double[] mean(double[][] values, double[] moved) {
        double[] mean = new double[values[0].length];
        for (int i = 0; i < mean.length; i++) {
            double sum = 0;
            int n = 0;
            for (int s = 0; s < values.length; s++) {
                if (!Double.isNaN(values[s][i])) {
                    sum += values[s][i] - moved[s];
                    n++;
                }
            }
            mean[i] = n == 0 ? Double.NaN : sum / n;
        }
        return mean;
    }

    private static double departure(double[] values, double[] mean) {
        double sum = 0;
        int n = 0;
        for (int i = 0; i < mean.length; i++) {
            if (!Double.isNaN(values[i])) {
                sum += values[i] - mean[i];
                n++;
            }
        }
        return n == 0 ? 0 : sum / n;
    }

    /** One sheet: hardness by parameter, with the temperature of each point. */
    private record Line(TreeMap<Double, Coupon> points) {

        static Line of(TemperingSheet sheet, HollomonJaffe exchange) {
            TreeMap<Double, Coupon> points = new TreeMap<>();
            sheet.asQuenched()
                    .ifPresent(hrc -> put(
                            points, exchange, new Coupon(new Temper(TemperingFigures.ROOM, sheet.reference()), hrc)));
            sheet.points().forEach(p -> put(points, exchange, p));
            return new Line(points);
        }

        private static void put(TreeMap<Double, Coupon> points, HollomonJaffe exchange, Coupon point) {
            points.put(
                    exchange.parameter(point.temper().kelvin(), point.temper().seconds()), point);
        }

        double first() {
            return points.firstKey();
        }

        double last() {
            return points.lastKey();
        }

        double at(double parameter) {
            var before = points.floorEntry(parameter);
            var after = points.ceilingEntry(parameter);
            if (before == null || after == null) {
                return Double.NaN;
            }
            double gap = after.getValue().temper().kelvin()
                    - before.getValue().temper().kelvin();
            if (gap > TemperingFigures.JOINED) {
                return Double.NaN;
            }
            double width = after.getKey() - before.getKey();
            double part = width > 0 ? (parameter - before.getKey()) / width : 0;
            return before.getValue().hrc() * (1 - part) + after.getValue().hrc() * part;
        }
    }
}
