package org.strawblue.core.spring;

/**
 * f = ½ √(k/m): the lowest frequency at which a spring seated at both ends swings within itself.
 *
 * <p>k rate [N/m], m mass of the active coils [kg]. Finite elements find 0.986 of it. Source: from memory; the EN 13906-1
 * sheet's form gives the same.
 */
public final class Surge {

    private static final double HALF = Figures.FORMULAS.number("surge_half");

    private Surge() {}

    /** [Hz] */
    public static double frequency(double rate, double activeMass) {
        return HALF * Math.sqrt(rate / activeMass);
    }

    /** [kg], of wire in active coils; density [kg/m³] */
    public static double activeMass(double density, double wire, double meanDiameter, double activeCoils) {
        double section = Math.PI * wire * wire / 4;
        return density * section * Math.PI * meanDiameter * activeCoils;
    }
}
