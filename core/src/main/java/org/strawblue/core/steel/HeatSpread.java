package org.strawblue.core.steel;

import org.strawblue.core.estimate.Constants;
import org.strawblue.core.quantity.Dimension;

/**
 * How one heat of steel departs from the mean of its kind, at reduced Hollomon–Jaffe parameter z and u = log₁₀ t/h.
 *
 * <p>Covariance between two tempers [HRC²]: f (t₀² + t₁² z z′ + g² n) + q² u u′ n, with the nearness
 * n = exp(−(z − z′)²/2l² + r (z + z′)), f a factor of the law that asks. A reading adds σ² exp(2 r z), and more below the
 * end of the C scale.
 *
 * <p>Fitted to 32 heats of 1945, 1956 and 2010: {@code verification/tempering/fit.py}.
 */
record HeatSpread(double t0, double t1, double g, double l, double q, double r, double sigma, double softNoise) {

    private static final Constants TABLE = Constants.of(HeatSpread.class, "tempering-spread.csv");

    static final HeatSpread FITTED = new HeatSpread(
            hrc("t0"),
            hrc("t1"),
            hrc("g"),
            TABLE.number("l"),
            hrc("q"),
            TABLE.number("r"),
            hrc("sigma"),
            TABLE.number("soft_noise"));

    /** Half-width of the 80 % interval in standard deviations, nothing measured of this bar. */
    static final double K_UNKNOWN = TABLE.number("k_formula");

    /** The same, the hardness as quenched known. */
    static final double K_QUENCHED = TABLE.number("k_quenched");

    /** The same, test pieces of this bar or a published curve known. */
    static final double K_KNOWN = TABLE.number("k_known");

    /** The z at which the hardness as quenched counts, and its spread there [HRC]. */
    static final double QUENCHED_Z = TABLE.number("quenched_z");

    static final double QUENCHED_SD = hrc("quenched_sd");

    private static double hrc(String key) {
        return TABLE.si(key, Dimension.HARDNESS);
    }

    /** [HRC²] */
    double covariance(double f, double z1, double u1, double z2, double u2) {
        double apart = (z1 - z2) / l;
        double near = Math.exp(-apart * apart / 2 + r * (z1 + z2));
        return f * (t0 * t0 + t1 * t1 * z1 * z2 + g * g * near) + q * q * u1 * u2 * near;
    }

    /** The factor f by which the deviation has this standard deviation [HRC] at z = 0. */
    double factor(double sd) {
        return sd * sd / (t0 * t0 + g * g);
    }

    /** Variance of one reading of this hardness [HRC²]. */
    double reading(double z, double hrc) {
        double variance = sigma * sigma * Math.exp(2 * r * z);
        return hrc < TemperingFigures.SOFT ? variance * softNoise : variance;
    }
}
