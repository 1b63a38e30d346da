package org.strawblue.core.estimate;

import org.hipparchus.special.Erf;

/** The normal curve, as far as 80 % intervals need it. */
public final class Normal {

    /** Half an 80 % interval in standard deviations [1]: one chance in ten lies beyond it on either side. */
    public static final double HALF_OF_80 = Math.sqrt(2) * Erf.erfInv(0.8);

    private Normal() {}

    /** Chance of a value below {@code x} standard deviations from the middle [1]. */
    public static double below(double x) {
        return Erf.erfc(-x / Math.sqrt(2)) / 2;
    }

    /** The value, in standard deviations from the middle, below which a chance [1] lies: the inverse of {@link #below}. */
    public static double quantile(double chance) {
        return -Math.sqrt(2) * Erf.erfcInv(2 * chance);
    }
}
