package org.strawblue.core.steel;

import org.strawblue.core.estimate.Constants;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;

/** The single figures of hardening, and what turns a standard deviation into an 80 % interval. */
final class Figures {

    static final Constants HARDENING = Constants.of(Figures.class, "hardening.csv");

    /** Half-width of the 80 % interval of a normal distribution, in standard deviations. */
    static final double Z80 = NormalShare.quantile(0.9);

    private Figures() {}

    static double number(String key) {
        return HARDENING.number(key);
    }

    static Estimate around(
            Dimension dimension, double value, double standardDeviation, org.strawblue.core.source.Basis... bases) {
        double half = Z80 * standardDeviation;
        return Estimate.of(dimension, value, value - half, value + half, bases);
    }
}
