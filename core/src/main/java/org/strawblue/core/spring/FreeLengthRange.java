package org.strawblue.core.spring;

/**
 * The free lengths at which a spring of otherwise exact sizes keeps every limit of a pocket: one unbroken range, since
 * each limit is crossed once as the spring gets longer.
 *
 * @param low [m]
 * @param high [m]; below {@code low} where no free length will do
 */
public record FreeLengthRange(double low, double high) {

    private static final FreeLengthRange NONE = new FreeLengthRange(1, 0);

    public boolean none() {
        return high < low;
    }

    public static FreeLengthRange of(Coil coil, Duty duty) {
        boolean fits = coil.active() > 0
                && duty.atFull() >= coil.solid() + coil.leastGap(duty.moving())
                && coil.inside() >= duty.rod();
        return fits ? new FreeLengthRange(low(coil, duty), high(coil, duty)) : NONE;
    }

    private static double low(Coil coil, Duty duty) {
        double rate = coil.rate(duty.moduli());
        double rest = duty.atRest() + duty.restForce().low() / rate;
        double full = duty.atFull() + duty.fullForce().low() / rate;
        return Math.max(duty.atRest(), Math.max(rest, full));
    }

    private static double high(Coil coil, Duty duty) {
        double rate = coil.rate(duty.moduli());
        double rest = duty.atRest() + duty.restForce().high() / rate;
        double full = duty.atFull() + duty.fullForce().high() / rate;
        double set = duty.atFull() + bearable(coil, duty.allowable()) / rate;
        double high = Math.min(Math.min(rest, full), Math.min(set, lasting(coil, duty, rate)));
        if (!Double.isInfinite(duty.bore())) {
            high = Math.min(high, clearing(coil, duty));
        }
        if (!duty.guided(coil)) {
            high = Math.min(high, Buckling.longestFree(duty.moduli(), coil.mean(), duty.atFull(), duty.seat()));
        }
        return high;
    }

    /** Force that brings the wire to a corrected stress [N]. */
    private static double bearable(Coil coil, double stress) {
        return stress / CompressionSpring.STRESS_FACTOR.stress(1, coil.mean(), coil.wire());
    }

    private static double lasting(Coil coil, Duty duty, double rate) {
        if (!duty.moving()) {
            return Double.POSITIVE_INFINITY;
        }
        double half = (duty.atRest() - duty.atFull()) / 2;
        double amplitude = CompressionSpring.STRESS_FACTOR.stress(rate * half, coil.mean(), coil.wire());
        double mean = Zimmerli.greatestMean(amplitude, duty.strength());
        return duty.atFull() + half + bearable(coil, mean) / rate;
    }

    /** Growth is so nearly straight in the free length that a line through two points finds where it fills the bore. */
    private static double clearing(Coil coil, Duty duty) {
        double from = Math.max(coil.free(), duty.atFull());
        double step = coil.wire();
        double here = duty.bore() - widest(coil, duty, from);
        double slope = (duty.bore() - widest(coil, duty, from + step) - here) / step;
        return slope < 0 ? from - here / slope : Double.POSITIVE_INFINITY;
    }

    private static double widest(Coil coil, Duty duty, double free) {
        Coil longer = new Coil(coil.wire(), coil.outside(), free, coil.total(), coil.ends(), coil.stiffness());
        return CompressionSpring.widestOutside(longer, duty.moduli(), duty.atFull());
    }
}
