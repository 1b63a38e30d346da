package org.strawblue.core.spring.family;

/**
 * Shares of the least tensile strength R up to which springs take no set: body of an extension spring 0.45 R, its hook 0.75 R in
 * bending and 0.40 R in torsion, torsion spring 0.75 R, flat strip 0.75 R.
 *
 * <p>Disc springs: σ_OM up to the yield of their steel, 1400 to 1600 MPa. Source: trade pages and textbooks; see laws.csv.
 */
public final class FamilyLimits {

    private FamilyLimits() {}

    /** [Pa] */
    public static double body(double strength) {
        return strength * Laws.OF.number("extension_body_share");
    }

    /** [Pa] */
    public static double hookBending(double strength) {
        return strength * Laws.OF.number("extension_hook_bending_share");
    }

    /** [Pa] */
    public static double hookTorsion(double strength) {
        return strength * Laws.OF.number("extension_hook_torsion_share");
    }

    /** [Pa] */
    public static double torsion(double strength) {
        return strength * Laws.OF.number("torsion_share");
    }

    /** Force up to which an extension spring takes no set anywhere [N]. */
    public static double force(ExtensionSpring s, double strength) {
        double inBody = body(strength) / s.bodyStress(1);
        double inBend = hookBending(strength) / s.hookBending(1);
        return Math.min(inBody, Math.min(inBend, hookTorsion(strength) / s.hookTorsion(1)));
    }
}
