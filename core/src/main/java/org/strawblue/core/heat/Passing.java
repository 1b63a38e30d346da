package org.strawblue.core.heat;

/**
 * A part on its way to heat, at one temperature of it.
 *
 * @param kelvin that temperature [K]
 * @param seconds when it has it [s]
 * @param quickest when one in ten has it already [s]
 * @param slowest when nine in ten have it [s]; infinite where they may never
 */
public record Passing(double kelvin, double seconds, double quickest, double slowest) {}
