package org.strawblue.core.spring;

/**
 * Elastic moduli of a wire.
 *
 * @param tension E [Pa]
 * @param shear G [Pa]
 */
public record Moduli(double tension, double shear) {

    private static final double ZERO =
            Constants.FORMULAS.si("modulus_zero_temperature", org.strawblue.core.quantity.Dimension.TEMPERATURE);
    private static final double REFERENCE =
            Constants.FORMULAS.si("modulus_reference_temperature", org.strawblue.core.quantity.Dimension.TEMPERATURE);

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
