package org.strawblue.core.steel;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.BesselJ;

/**
 * The critical diameter D of a bath of one severity H, from the ideal diameter D_I: D_I = D √(Fo(H D)/Fo(∞)).
 *
 * <p>Fo is the Fourier number on radius at which the centre of a long cylinder comes half-way from start to bath; Biot number
 * on radius H D, H = h/2k [1/m]. Two bars are taken to harden alike where their centres come to half temperature in the same
 * time. H is held constant, which no bath does: for parts under 6 mm it understates oil, whose strongest cooling lies inside the
 * range that matters. Kept beside {@link Quenching} as the classical reckoning. Source: Grossmann; series of the long cylinder
 * from standard texts.
 */
public final class Grossmann {

    private static final int TERMS = 12;
    private static final double TOLERANCE = 1e-9;
    private static final int TRIES = 200;

    private Grossmann() {}

    /** D [m] for an ideal diameter D_I [m] and a severity H [1/m]. */
    public static double criticalDiameter(double ideal, double severity) {
        return solve(d -> idealDiameter(d, severity) - ideal, ideal * TOLERANCE, ideal);
    }

    /** D_I [m] that a bar of diameter D [m] half hardened in severity H [1/m] needs. */
    public static double idealDiameter(double diameter, double severity) {
        return diameter * Math.sqrt(halfTemperature(severity * diameter) / Figures.number("half-fo"));
    }

    /** Fourier number at which the centre of a long cylinder is at half temperature, for a Biot number on radius. */
    public static double halfTemperature(double biot) {
        double[] roots = new double[TERMS];
        for (int n = 0; n < TERMS; n++) {
            roots[n] = root(n, biot);
        }
        double slowest = roots[0] * roots[0];
        return solve(fo -> centre(fo, roots) - 1.0 / 2, TOLERANCE / slowest, 2 / slowest);
    }

    /** θ₀ = Σ 2 J₁(ζ)/(ζ (J₀² + J₁²)) exp(−ζ² Fo). */
    static double centre(double fourier, double[] roots) {
        double sum = 0;
        for (double zeta : roots) {
            double j0 = BesselJ.value(0, zeta);
            double j1 = BesselJ.value(1, zeta);
            sum += 2 * j1 / (zeta * (j0 * j0 + j1 * j1)) * Math.exp(-zeta * zeta * fourier);
        }
        return sum;
    }

    /** The first root of ζ J₁(ζ) = Bi J₀(ζ), which sets how fast a long cylinder cools. */
    public static double firstRoot(double biot) {
        return root(0, biot);
    }

    /** The n-th root of ζ J₁(ζ) = Bi J₀(ζ); it lies between the n-th zeros of J₁ (with 0) and J₀. */
    static double root(int n, double biot) {
        double low = n == 0 ? 0 : zero(1, n - 1);
        return solve(z -> z * BesselJ.value(1, z) - biot * BesselJ.value(0, z), low, zero(0, n));
    }

    /** The n-th positive zero of J of this order, near π (n + order/2 + 3/4). */
    private static double zero(int order, int n) {
        double near = Math.PI * (n + order / 2.0 + 3.0 / 4);
        return solve(z -> BesselJ.value(order, z), near - 1.0 / 2, near + 1.0 / 2);
    }

    private static double solve(UnivariateFunction f, double low, double high) {
        return new BracketingNthOrderBrentSolver(TOLERANCE, Math.max(Math.abs(high), 1) * 1e-13, 5)
                .solve(TRIES, f, low, high);
    }
}
