package org.strawblue.core.evidence.learn;

import org.strawblue.core.estimate.Normal;

/** Bells of given shares, means and standard deviations, together. */
@SuppressWarnings("ArrayRecordComponent") // handed on within the room only
record Mixture(double[] share, double[] mean, double[] sd) {

    private static final int HALVINGS = 60;
    /** Standard deviations beyond which a bell has nothing to speak of. */
    private static final int WIDE = 9;

    /** Chance of less than {@code x}. */
    double below(double x) {
        double sum = 0;
        for (int k = 0; k < share.length; k++) {
            sum += share[k] * Normal.below((x - mean[k]) / sd[k]);
        }
        return sum;
    }

    double quantile(double chance) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < share.length; k++) {
            low = Math.min(low, mean[k] - WIDE * sd[k]);
            high = Math.max(high, mean[k] + WIDE * sd[k]);
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean under = below(middle) < chance;
            low = under ? middle : low;
            high = under ? high : middle;
        }
        return (low + high) / 2;
    }

    double middle() {
        double sum = 0;
        for (int k = 0; k < share.length; k++) {
            sum += share[k] * mean[k];
        }
        return sum;
    }

    double spread() {
        double middle = middle();
        double sum = 0;
        for (int k = 0; k < share.length; k++) {
            double off = mean[k] - middle;
            sum += share[k] * (sd[k] * sd[k] + off * off);
        }
        return Math.sqrt(sum);
    }
}
