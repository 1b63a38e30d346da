package org.strawblue.core.estimate;

import java.util.stream.IntStream;
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

    /** The same, read from a table made once: error below 1e-5, a few nanoseconds where the exact one takes hundreds. */
    public static double nearlyBelow(double x) {
        if (x <= -Curve.END) {
            return 0;
        }
        if (x >= Curve.END) {
            return 1;
        }
        double at = (x + Curve.END) * Curve.STEPS;
        int i = (int) at;
        return Curve.SHARE[i] + (at - i) * (Curve.SHARE[i + 1] - Curve.SHARE[i]);
    }

    private static final class Curve {

        static final int END = 6;
        static final int STEPS = 64;
        static final double[] SHARE = IntStream.range(0, 2 * END * STEPS + 2)
                .mapToDouble(i -> below((double) i / STEPS - END))
                .toArray();
    }

    /** The value, in standard deviations from the middle, below which a chance [1] lies: the inverse of {@link #below}. */
    public static double quantile(double chance) {
        return -Math.sqrt(2) * Erf.erfcInv(2 * chance);
    }
}
