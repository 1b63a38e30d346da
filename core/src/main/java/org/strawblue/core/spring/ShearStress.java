package org.strawblue.core.spring;

/**
 * τ₀ = 8 F D / (π d³), straight torsion of the wire, without the curvature of the coil.
 *
 * <p>F force [N], D mean coil diameter [m], d wire [m]. Too low on the inside of the coil by 14 % at index 10 and by
 * 38 % at index 4: see {@link StressFactor}. Source: engineering handbook, springs chapter.
 */
public final class ShearStress {

    private static final double FACTOR = Figures.FORMULAS.number("stress_factor");

    private ShearStress() {}

    /** [Pa] */
    public static double uncorrected(double force, double meanDiameter, double wire) {
        return FACTOR * force * meanDiameter / (Math.PI * wire * wire * wire);
    }
}
