package org.strawblue.core.spring;

/**
 * G* = 8 k D³ n/d⁴: the shear modulus that a measured rate and measured sizes imply.
 *
 * <p>k rate [N/m], D mean diameter [m], n working coils [1], d wire [m]. The classical rate solved for G.
 */
public final class ModulusFromRate {

    private static final RateLaw RATE = new ClassicalRate();

    private ModulusFromRate() {}

    /** [Pa] */
    public static double of(double rate, double wire, double meanDiameter, double activeCoils) {
        return rate / RATE.rate(new Moduli(1, 1), wire, meanDiameter, activeCoils, 0);
    }
}
