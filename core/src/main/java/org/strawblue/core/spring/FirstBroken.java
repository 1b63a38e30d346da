package org.strawblue.core.spring;

import org.jspecify.annotations.Nullable;

/** The first limit that a spring of exact sizes breaks, the cheapest to ask first; the same limits as {@link Margins}. */
final class FirstBroken {

    private FirstBroken() {}

    /** Null where it keeps them all. */
    static @Nullable Limit of(Coil coil, Duty duty) {
        if (coil.inside() < duty.rod()) {
            return Limit.GOES_OVER_ROD;
        }
        if (coil.outside() > duty.bore()) {
            return Limit.CLEARS_BORE;
        }
        if (coil.free() < duty.atRest()) {
            return Limit.REACHES;
        }
        double rate = coil.rate(duty.moduli());
        double rest = rate * (coil.free() - duty.atRest());
        double full = rate * (coil.free() - duty.atFull());
        if (rest < duty.restForce().low()) {
            return Limit.FIRM_AT_REST;
        }
        if (full < duty.fullForce().low()) {
            return Limit.FIRM_AT_FULL_TRAVEL;
        }
        return mendable(coil, duty, rate, rest, full);
    }

    /** What a cut may mend. */
    private static @Nullable Limit mendable(Coil coil, Duty duty, double rate, double rest, double full) {
        if (duty.atFull() < coil.solid() + coil.leastGap(duty.moving())) {
            return Limit.CLEAR_OF_SOLID;
        }
        if (rest > duty.restForce().high()) {
            return Limit.SOFT_AT_REST;
        }
        if (full > duty.fullForce().high()) {
            return Limit.SOFT_AT_FULL_TRAVEL;
        }
        if (CompressionSpring.STRESS_FACTOR.stress(full, coil.mean(), coil.wire()) > duty.allowable()) {
            return Limit.TAKES_NO_SET;
        }
        return shape(coil, duty, rate, full);
    }

    private static @Nullable Limit shape(Coil coil, Duty duty, double rate, double full) {
        if (!Double.isInfinite(duty.bore())
                && CompressionSpring.widestOutside(coil, duty.moduli(), duty.atFull()) > duty.bore()) {
            return Limit.CLEARS_BORE;
        }
        if (!duty.guided(coil)
                && coil.free() > Buckling.longestFree(duty.moduli(), coil.mean(), duty.atFull(), duty.seat())) {
            return Limit.STAYS_STRAIGHT;
        }
        double stress = CompressionSpring.STRESS_FACTOR.stress(full, coil.mean(), coil.wire());
        return Margins.lasts(coil, duty, stress, rate) < 0 ? Limit.LASTS : null;
    }

    /**
     * Whether every cut would break it as well. Softness is one: at a given length a cut spring pushes less, since what it
     * loses in free length weighs more than what it gains in stiffness.
     */
    static boolean beyondCutting(Limit broken, Coil coil, Duty duty) {
        return switch (broken) {
            case GOES_OVER_ROD, REACHES, FIRM_AT_REST, FIRM_AT_FULL_TRAVEL -> true;
            case CLEARS_BORE -> coil.outside() > duty.bore();
            default -> false;
        };
    }
}
