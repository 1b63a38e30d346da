package org.strawblue.core.steel;

import org.strawblue.core.estimate.Constants;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/** The single figures of hardening. */
final class Figures {

    static final Constants HARDENING = Constants.of(Figures.class, "hardening.csv");

    private Figures() {}

    static double number(String key) {
        return HARDENING.number(key);
    }

    static Estimate around(Dimension dimension, double value, double standardDeviation, Basis... bases) {
        double half = Normal.HALF_OF_80 * standardDeviation;
        return Estimate.of(dimension, value, value - half, value + half, bases);
    }
}
