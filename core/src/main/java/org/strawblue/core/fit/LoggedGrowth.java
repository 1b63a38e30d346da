package org.strawblue.core.fit;

import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.part.Feature;
import org.strawblue.core.steel.Grade;

/**
 * One size of an earlier part of the same shop, before hardening and after its last temper.
 *
 * @param before [m]
 * @param after [m]
 */
public record LoggedGrowth(Grade grade, Feature.Kind kind, Estimate before, Estimate after) {

    /** Growth [1]: (after − before)/before. */
    double share() {
        return (after.value() - before.value()) / before.value();
    }

    /** Variance of the growth from the two readings. */
    double readingVariance() {
        double a = (after.high() - after.low()) / 2;
        double b = (before.high() - before.low()) / 2;
        double sd = Math.hypot(a, b) / Normal.HALF_OF_80 / before.value();
        return sd * sd;
    }

    boolean bore() {
        return kind == Feature.Kind.BORE;
    }
}
