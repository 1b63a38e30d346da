package org.strawblue.core.steel;

import org.hipparchus.special.Erf;

/** The normal distribution: shares and the points that part them. */
final class NormalShare {

    private static final double ROOT_2 = Math.sqrt(2);

    private NormalShare() {}

    /** Φ(z) = ½ erfc(−z/√2), the share below z standard deviations. */
    static double below(double z) {
        return Erf.erfc(-z / ROOT_2) / 2;
    }

    /** The z below which this share lies. */
    static double quantile(double share) {
        return ROOT_2 * Erf.erfInv(2 * share - 1);
    }
}
