package org.strawblue.core.spring;

import org.strawblue.core.quantity.Dimension;

/**
 * τ_a/S_e + τ_m/S_u ≤ 1, S_e = S_a/(1 − S_m/S_u), S_u = 0.67 R_m.
 *
 * <p>τ_a, τ_m amplitude and mean of the corrected shear stress [Pa], R_m tensile strength [Pa]. S_a = 241 MPa and S_m =
 * 379 MPa for wire that was not peened, any spring steel under 10 mm. Source: Zimmerli; straight line after Goodman.
 */
public final class Zimmerli {

    private static final double AMPLITUDE = Figures.FORMULAS.si("zimmerli_amplitude", Dimension.STRESS);
    private static final double MEAN = Figures.FORMULAS.si("zimmerli_mean", Dimension.STRESS);
    private static final double SHEAR = Figures.FORMULAS.number("shear_strength_share");

    private Zimmerli() {}

    /** S_e: the amplitude borne for ever about no mean stress [Pa]. */
    public static double endurance(double strength) {
        return AMPLITUDE / (1 - MEAN / shearStrength(strength));
    }

    /** S_e from a parabola instead of a straight line, after Gerber: S_a/(1 − (S_m/S_u)²) [Pa]. */
    public static double enduranceByParabola(double strength) {
        double mean = MEAN / shearStrength(strength);
        return AMPLITUDE / (1 - mean * mean);
    }

    /** S_u = 0.67 R_m [Pa] */
    public static double shearStrength(double strength) {
        return SHEAR * strength;
    }

    /** The greatest mean stress that goes with an amplitude [Pa]. */
    public static double greatestMean(double amplitude, double strength) {
        return shearStrength(strength) * (1 - amplitude / endurance(strength));
    }
}
