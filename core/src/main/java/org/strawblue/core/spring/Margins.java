package org.strawblue.core.spring;

import java.util.OptionalDouble;

/** How far a spring of exact sizes keeps each limit of a pocket: each margin as a share of what it is measured by. */
public final class Margins {

    private static final Limit[] LIMITS = Limit.values();
    private final double[] margins = new double[LIMITS.length];

    private Margins() {}

    public static Margins of(Coil coil, Duty duty) {
        Margins m = new Margins();
        double rate = coil.rate(duty.moduli());
        double atRest = rate * (coil.free() - duty.atRest());
        double atFull = rate * (coil.free() - duty.atFull());
        m.set(Limit.REACHES, (coil.free() - duty.atRest()) / duty.atRest());
        m.set(Limit.FIRM_AT_REST, over(atRest, duty.restForce().low()));
        m.set(Limit.SOFT_AT_REST, under(atRest, duty.restForce().high()));
        m.set(Limit.FIRM_AT_FULL_TRAVEL, over(atFull, duty.fullForce().low()));
        m.set(Limit.SOFT_AT_FULL_TRAVEL, under(atFull, duty.fullForce().high()));
        m.set(Limit.CLEAR_OF_SOLID, (duty.atFull() - coil.solid() - coil.leastGap(duty.moving())) / duty.atFull());
        m.set(Limit.CLEARS_BORE, bore(coil, duty));
        m.set(Limit.GOES_OVER_ROD, (coil.inside() - duty.rod()) / coil.inside());
        m.set(Limit.STAYS_STRAIGHT, straight(coil, duty));
        double stress = CompressionSpring.STRESS_FACTOR.stress(atFull, coil.mean(), coil.wire());
        m.set(Limit.TAKES_NO_SET, under(stress, duty.allowable()));
        m.set(Limit.LASTS, lasts(coil, duty, stress, rate));
        return m;
    }

    public double get(Limit limit) {
        return margins[limit.ordinal()];
    }

    public double worst() {
        double worst = Double.POSITIVE_INFINITY;
        for (double m : margins) {
            worst = Math.min(worst, m);
        }
        return worst;
    }

    public boolean kept() {
        return worst() >= 0;
    }

    private void set(Limit limit, double margin) {
        margins[limit.ordinal()] = margin;
    }

    private static double over(double value, double least) {
        return least > 0 ? value / least - 1 : Double.POSITIVE_INFINITY;
    }

    private static double under(double value, double most) {
        return 1 - value / most;
    }

    private static double bore(Coil coil, Duty duty) {
        return Double.isInfinite(duty.bore())
                ? Double.POSITIVE_INFINITY
                : 1 - CompressionSpring.widestOutside(coil, duty.moduli(), duty.atFull()) / duty.bore();
    }

    private static double straight(Coil coil, Duty duty) {
        if (duty.guided(coil)) {
            return Double.POSITIVE_INFINITY;
        }
        OptionalDouble critical = Buckling.criticalDeflection(duty.moduli(), coil.mean(), coil.free(), duty.seat());
        return critical.isEmpty()
                ? Double.POSITIVE_INFINITY
                : (critical.getAsDouble() - (coil.free() - duty.atFull())) / coil.free();
    }

    static double lasts(Coil coil, Duty duty, double stressAtFull, double rate) {
        if (!duty.moving()) {
            return Double.POSITIVE_INFINITY;
        }
        double amplitude = CompressionSpring.STRESS_FACTOR.stress(
                rate * (duty.atRest() - duty.atFull()) / 2, coil.mean(), coil.wire());
        double most = Zimmerli.greatestMean(amplitude, duty.strength());
        return (most - (stressAtFull - amplitude)) / duty.strength();
    }
}
