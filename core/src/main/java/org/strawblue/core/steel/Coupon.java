package org.strawblue.core.steel;

import java.util.OptionalDouble;

/**
 * One measured point of a bar's tempering curve: a test piece, or a point of its mill sheet.
 *
 * @param hrc hardness after the temper [HRC]
 * @param sd standard deviation of that reading [HRC], if it is worse than a laboratory's
 */
public record Coupon(Temper temper, double hrc, OptionalDouble sd) {

    public Coupon(Temper temper, double hrc) {
        this(temper, hrc, OptionalDouble.empty());
    }
}
