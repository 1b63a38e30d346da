package org.strawblue.core.steel;

/**
 * One point of a tempering curve: hardness after a hold.
 *
 * @param hrc hardness after it [HRC]
 */
public record Coupon(Temper temper, double hrc) {}
