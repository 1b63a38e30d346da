package org.strawblue.core.spring.identify;

import org.strawblue.core.spring.MeasurementErrors;

/**
 * (dk/k)² = [(4 + 3/C) dd/d]² + [3 (1 + 1/C) dD_e/D_e]² + [dn/n]² + [dG/G]²: where the doubt in a rate from sizes comes from.
 *
 * <p>d wire, D_e outside diameter, C index, n working coils, G shear modulus; each d… a half-width of its 80 % interval. The
 * wire counts more than four times since the mean diameter is D_e − d. Source: derived in this project from the rate
 * formula.
 *
 * @param wire share of the rate that the error of the wire makes [1]
 * @param outside [1]
 * @param coils [1]
 * @param modulus [1]
 */
public record ErrorBudget(double wire, double outside, double coils, double modulus) {

    /** @param modulusError dG/G [1] */
    public static ErrorBudget of(
            double wire, double outside, double active, MeasurementErrors errors, double modulusError) {
        double index = (outside - wire) / wire;
        return new ErrorBudget(
                (4 + 3 / index) * errors.wire() / wire,
                3 * (1 + 1 / index) * errors.outside() / outside,
                errors.coils() / active,
                modulusError);
    }

    /** All four together [1]. */
    public double total() {
        return Math.hypot(sizes(), modulus);
    }

    /** Without the modulus [1]. */
    public double sizes() {
        return Math.hypot(Math.hypot(wire, outside), coils);
    }
}
