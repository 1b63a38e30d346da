package org.strawblue.core.oxide;

import org.strawblue.core.source.Basis;

/**
 * xⁿ = x₀ⁿ + Xⁿ Θ/t₀: parabolic for n = 2, cubic for n = 3; real thin films slow down more than that.
 *
 * <p>x thickness [m], X thickness [m] after t₀ [s] at the reference temperature, n the exponent.
 */
record PowerLaw(
        String name,
        double exponent,
        double activation,
        double referenceThickness,
        double referenceSeconds,
        double referenceTemperature,
        Basis basis)
        implements GrowthLaw {

    @Override
    public double thickness(double initial, double equivalentSeconds) {
        double start = Math.pow(initial / referenceThickness, exponent);
        return referenceThickness * Math.pow(start + equivalentSeconds / referenceSeconds, 1 / exponent);
    }

    @Override
    public double equivalentSeconds(double initial, double thickness) {
        return referenceSeconds
                * (Math.pow(thickness / referenceThickness, exponent)
                        - Math.pow(initial / referenceThickness, exponent));
    }
}
