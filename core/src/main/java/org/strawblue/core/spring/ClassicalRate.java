package org.strawblue.core.spring;

import org.strawblue.core.source.Basis;

/**
 * k = G d⁴ / (8 D³ n).
 *
 * <p>G shear modulus [Pa], d wire [m], D mean diameter [m], n active coils [1]. Within 0.8 % of finite elements for
 * index 4 to 10 and helix angles up to 13°. Source: engineering handbook, springs chapter.
 */
public record ClassicalRate() implements RateLaw {

    private static final double DIVISOR = Figures.FORMULAS.number("rate_divisor");

    @Override
    public double rate(Moduli moduli, double wire, double meanDiameter, double activeCoils, double pitch) {
        double index = meanDiameter / wire;
        return moduli.shear() * wire / (DIVISOR * index * index * index * activeCoils);
    }

    @Override
    public Basis basis() {
        return Figures.FORMULAS.basis("rate of a helical spring", "rate_divisor");
    }
}
