package org.strawblue.core.evidence.judge;

import org.strawblue.core.evidence.sample.Ensemble;

/**
 * A number was read: Student's t with four degrees about what the history would have shown, so that one wild reading does not
 * outweigh all else.
 */
final class Measured implements Clue {

    private static final double DEGREES = 4;

    /** What a history would have shown; NaN where it tells nothing. */
    @FunctionalInterface
    interface Expected {
        double of(Ensemble ensemble, int draw);
    }

    private final double reading;
    private final Expected expected;
    private final double spread;

    Measured(double reading, Expected expected, double spread) {
        this.reading = reading;
        this.expected = expected;
        this.spread = spread;
    }

    /** The same instrument reading something else. */
    Measured showing(double other) {
        return new Measured(other, expected, spread);
    }

    double expected(Ensemble ensemble, int draw) {
        return expected.of(ensemble, draw);
    }

    double spread() {
        return spread;
    }

    /** Whether any history would have shown anything at all. */
    boolean tells(Ensemble ensemble) {
        return !Double.isNaN(expected.of(ensemble, 0));
    }

    private double off(Ensemble ensemble, int draw) {
        double off = (reading - expected.of(ensemble, draw)) / spread;
        return Double.isNaN(off) ? 0 : off;
    }

    @Override
    public double log(Ensemble ensemble, int draw) {
        double off = off(ensemble, draw);
        return -(DEGREES + 1) / 2 * Math.log1p(off * off / DEGREES);
    }

    @Override
    public double atMost(Ensemble ensemble, int draw) {
        return below(off(ensemble, draw));
    }

    @Override
    public double atLeast(Ensemble ensemble, int draw) {
        return below(-off(ensemble, draw));
    }

    /** Chance [1] of less: F(t) = 1/2 + (3/8) u (1 − u²/12), u = t/√(1 + t²/4), Student's t with four degrees. */
    private static double below(double t) {
        double u = t / Math.sqrt(1 + t * t / DEGREES);
        return Math.max(0, Math.min(1, 1.0 / 2 + 3.0 / 8 * u * (1 - u * u / 12)));
    }
}
