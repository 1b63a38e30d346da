package org.strawblue.core.job.plan;

import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;

/** Chances as figures of the card. */
final class Chances {

    /** Nothing here is known so well that a chance nearer to certainty than one in a hundred could be told. */
    private static final Band TELLABLE = Practice.tellableChance();

    private Chances() {}

    /** Chance that {@code estimate} ends within {@code limits}. It is the spread already, so it has none of its own. */
    static Estimate within(Estimate estimate, Band limits) {
        return of(estimate.chanceWithin(limits), estimate);
    }

    static Estimate of(double chance, Estimate because) {
        double told = TELLABLE.clamp(chance);
        return Estimate.of(Dimension.FRACTION, told, told, told, because.bases());
    }

    static Quantity told(double chance) {
        return Quantity.fraction(TELLABLE.clamp(chance));
    }
}
