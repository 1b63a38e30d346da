package org.strawblue.core.evidence.sample;

import java.util.Arrays;
import java.util.Collection;
import java.util.stream.IntStream;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/** What each history of an ensemble counts, in sum 1. */
public final class Weights {

    private static final int HALVINGS = 30;

    private final double[] share;

    private Weights(double[] share) {
        this.share = share;
    }

    /** From logarithms, which may have any constant in common. Where none of them is finite, all count alike. */
    public static Weights of(double[] logs) {
        double most = Arrays.stream(logs).filter(x -> !Double.isNaN(x)).max().orElse(0);
        double[] share = new double[logs.length];
        if (!Double.isFinite(most)) {
            Arrays.fill(share, 1.0 / logs.length);
            return new Weights(share);
        }
        double sum = 0;
        for (int i = 0; i < logs.length; i++) {
            share[i] = Double.isNaN(logs[i]) ? 0 : Math.exp(logs[i] - most);
            sum += share[i];
        }
        for (int i = 0; i < logs.length; i++) {
            share[i] /= sum;
        }
        return new Weights(share);
    }

    /** From logarithms times the greatest power up to 1 that leaves {@code effective} histories in play. */
    static Weights tempered(double[] logs, double effective) {
        Weights plain = of(logs);
        if (plain.effective() >= effective) {
            return plain;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean enough = of(power(logs, middle)).effective() >= effective;
            low = enough ? middle : low;
            high = enough ? high : middle;
        }
        return of(power(logs, low));
    }

    private static double[] power(double[] logs, double power) {
        return Arrays.stream(logs)
                .map(x -> x == Double.NEGATIVE_INFINITY ? x : x * power)
                .toArray();
    }

    public double of(int draw) {
        return share[draw];
    }

    public int size() {
        return share.length;
    }

    /** Histories that would tell as much were they all to count alike: 1/Σw². */
    public double effective() {
        return 1 / Arrays.stream(share).map(w -> w * w).sum();
    }

    /** Median and 80 % interval of a value that each history has. Histories without one, NaN, are left out. */
    public Estimate estimate(Dimension dimension, double[] values, Collection<Basis> bases) {
        double[] q = quantiles(values, 0.1, 0.5, 0.9);
        return Estimate.of(dimension, q[1], q[0], q[2], bases);
    }

    /** Values below which these chances, rising, lie; NaN where no history has a value. */
    public double[] quantiles(double[] values, double... chances) {
        int[] order = IntStream.range(0, values.length)
                .filter(i -> !Double.isNaN(values[i]) && share[i] > 0)
                .boxed()
                .sorted((a, b) -> Double.compare(values[a], values[b]))
                .mapToInt(i -> i)
                .toArray();
        double all = Arrays.stream(order).mapToDouble(i -> share[i]).sum();
        double[] found = new double[chances.length];
        for (int c = 0; c < chances.length; c++) {
            found[c] = quantile(values, order, chances[c] * all);
        }
        return found;
    }

    /** Straight lines between the middles of the histories' weights. */
    private double quantile(double[] values, int[] order, double wanted) {
        double passed = 0;
        double lastValue = order.length == 0 ? Double.NaN : values[order[0]];
        double lastMiddle = 0;
        for (int i : order) {
            double middle = passed + share[i] / 2;
            if (middle >= wanted) {
                double part = middle > lastMiddle ? (wanted - lastMiddle) / (middle - lastMiddle) : 1;
                return lastValue + Math.max(0, Math.min(1, part)) * (values[i] - lastValue);
            }
            passed += share[i];
            lastMiddle = middle;
            lastValue = values[i];
        }
        return lastValue;
    }

    public double mean(double[] values) {
        double sum = 0;
        double all = 0;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(values[i])) {
                sum += share[i] * values[i];
                all += share[i];
            }
        }
        return sum / all;
    }

    /** Chance [1] that the value lies within the limits, of the histories that have one. */
    public double chanceWithin(double[] values, Band limits) {
        return mean(Arrays.stream(values)
                .map(v -> Double.isNaN(v) ? v : limits.contains(v) ? 1 : 0)
                .toArray());
    }
}
