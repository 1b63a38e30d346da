package org.strawblue.core.spring;

/**
 * n τ_a/S_e + (n τ_m/S_u)² = 1, S_e = S_a/(1 − (S_m/S_u)²) with {@link Zimmerli}'s S_a and S_m: the parabola through the
 * middle of test results.
 *
 * <p>For unpeened wire under 10 mm. Source: textbook, working springs, from memory.
 */
public record GerberFatigue() implements FatigueLaw {

    @Override
    public double safety(double amplitude, double mean, double strength) {
        double a = amplitude / Zimmerli.enduranceByParabola(strength);
        double m = mean / Zimmerli.shearStrength(strength);
        return 2 / (a + Math.sqrt(a * a + 4 * m * m));
    }
}
