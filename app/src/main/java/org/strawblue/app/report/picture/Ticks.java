package org.strawblue.app.report.picture;

/** Round steps of a scale. */
public final class Ticks {

    private Ticks() {}

    /** The least of 1, 2 or 5 × 10ⁿ that is not less than this. */
    public static double step(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double m : new double[] {1, 2, 5}) {
            if (m * power >= least * (1 - 1e-9)) {
                return m * power;
            }
        }
        return 10 * power;
    }
}
