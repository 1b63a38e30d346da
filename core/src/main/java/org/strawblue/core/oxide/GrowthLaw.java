package org.strawblue.core.oxide;

import org.strawblue.core.source.Basis;

/**
 * How a film thickens in air.
 *
 * <p>Every law here has one activation energy, so that a whole temperature history comes down to one number, the
 * equivalent time at the reference temperature: Θ = ∫ exp[−(Q/R)(1/T − 1/T₀)] dt, Q [J/mol], T, T₀ [K], t [s]. Growth
 * through two heats is then growth through the sum of their Θ.
 */
public sealed interface GrowthLaw permits PowerLaw, LogarithmicLaw {

    String name();

    /** Q [J/mol] */
    double activation();

    /** T₀ [K] */
    double referenceTemperature();

    /** Thickness [m] from an initial one [m] after the equivalent time Θ [s]. */
    double thickness(double initial, double equivalentSeconds);

    /** Θ [s] that takes a film from an initial thickness [m] to another, not thinner [m]: the inverse. */
    double equivalentSeconds(double initial, double thickness);

    Basis basis();
}
