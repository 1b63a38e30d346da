package org.strawblue.core.spring;

import java.util.OptionalDouble;

/**
 * s_K = L₀ · 0.5/(1 − G/E) · [1 − √(1 − (1 − G/E)/(0.5 + G/E) · (π D/(ν L₀))²)].
 *
 * <p>s_K deflection at which the spring bows out [m], L₀ free length [m], D mean diameter [m], ν seating factor [1].
 * Where the root is of a negative number the spring never bows out. Source: EN 13906-1, constants checked against an
 * open stability page.
 */
public final class Buckling {

    private static final double HALF = Figures.FORMULAS.number("buckling_half");

    private Buckling() {}

    /** [m]; absent where the spring is too stout to bow out at any deflection */
    public static OptionalDouble criticalDeflection(
            Moduli moduli, double meanDiameter, double freeLength, Seating seating) {
        double under = 1 - stout(moduli, meanDiameter, seating) / (freeLength * freeLength);
        return under < 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(freeLength * scale(moduli) * (1 - Math.sqrt(under)));
    }

    /** Free length up to which a spring never bows out [m]. */
    public static double alwaysStable(Moduli moduli, double meanDiameter, Seating seating) {
        return Math.sqrt(stout(moduli, meanDiameter, seating));
    }

    /**
     * The greatest free length that does not bow out when pressed to {@code length} [m]. It solves s_K(L₀) = L₀ − L,
     * which squared is a quadratic in L₀ with one root above 0.
     */
    static double longestFree(Moduli moduli, double meanDiameter, double length, Seating seating) {
        double b = stout(moduli, meanDiameter, seating);
        double c = scale(moduli);
        double two = 1 - 2 * c;
        double one = (c - 1) * length;
        double zero = length * length + c * c * b;
        double root = (-one - Math.sqrt(one * one - two * zero)) / two;
        boolean lowerBranch = c * root >= root - length;
        return lowerBranch ? Math.max(root, Math.sqrt(b)) : Math.sqrt(b);
    }

    private static double scale(Moduli moduli) {
        return HALF / (1 - moduli.ratio());
    }

    private static double stout(Moduli moduli, double meanDiameter, Seating seating) {
        double slim = Math.PI * meanDiameter / seating.factor();
        return (1 - moduli.ratio()) / (HALF + moduli.ratio()) * slim * slim;
    }
}
