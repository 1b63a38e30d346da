package org.strawblue.core.spring;

import org.strawblue.core.quantity.Dimension;

/**
 * Elastic moduli of a wire.
 *
 * @param tension E [Pa]
 * @param shear G [Pa]
 */
public record Moduli(double tension, double shear) {

    private static final double ZERO = Figures.FORMULAS.si("modulus_zero_temperature", Dimension.TEMPERATURE);
    private static final double REFERENCE = Figures.FORMULAS.si("modulus_reference_temperature", Dimension.TEMPERATURE);

    /** G/E [1] */
    public double ratio() {
        return shear / tension;
    }

    /** 1/(1 + ν) = 2G/E [1] */
    public double lateral() {
        return 2 * ratio();
    }

    /** The same wire at a temperature [K]: both moduli fall by (3620 − T)/3600, T in °C. Source: EN 13906-1 sheet. */
    public Moduli at(double kelvin) {
        double share = (ZERO - kelvin) / (ZERO - REFERENCE);
        return new Moduli(tension * share, shear * share);
    }
}
