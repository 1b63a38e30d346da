package org.strawblue.core.spring;

/**
 * D₁/D₀ = (cos²α₁ + m sin²α₁) / (cos²α₀ + m tan α₁ sin α₀ cos α₀), m = 1/(1 + ν): the ends turn freely, so that no
 * moment about the axis arises.
 *
 * <p>α helix angle free (0) and pressed (1), ν Poisson's ratio. The wire keeps its length, sin α₁ = p₁/ℓ with ℓ the
 * wire of one free coil. About 1.6 times {@link EndsHeld}. Within 4 % of the mean growth in finite elements. Source:
 * derived in this project from the elastic rod, docs/science/springs.md; EN 13906-1's formula agrees within 2 %.
 */
public record EndsFree() implements CoilGrowth {

    @Override
    public double growth(Moduli moduli, double meanDiameter, double wire, double freePitch, double pitch) {
        double around = Math.PI * meanDiameter;
        double length = Math.sqrt(around * around + freePitch * freePitch);
        double sin0 = freePitch / length;
        double cos0 = around / length;
        double sin1 = pitch / length;
        double cos1 = Math.sqrt(1 - sin1 * sin1);
        double m = moduli.lateral();
        double ratio = (cos1 * cos1 + m * sin1 * sin1) / (cos0 * cos0 + m * sin1 / cos1 * sin0 * cos0);
        return (ratio - 1) * meanDiameter;
    }
}
