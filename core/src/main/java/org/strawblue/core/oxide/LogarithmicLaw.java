package org.strawblue.core.oxide;

import org.strawblue.core.source.Basis;

/**
 * x = L ln(exp(x₀/L) + Θ/t₀): a film that stifles itself. The rival that temper colours rule out.
 *
 * <p>x thickness [m], L the law's length [m], t₀ [s].
 */
record LogarithmicLaw(
        String name,
        double length,
        double activation,
        double referenceSeconds,
        double referenceTemperature,
        Basis basis)
        implements GrowthLaw {

    @Override
    public double thickness(double initial, double equivalentSeconds) {
        return length * Math.log(Math.exp(initial / length) + equivalentSeconds / referenceSeconds);
    }

    @Override
    public double equivalentSeconds(double initial, double thickness) {
        return referenceSeconds * (Math.exp(thickness / length) - Math.exp(initial / length));
    }
}
