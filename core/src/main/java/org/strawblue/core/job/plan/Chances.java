package org.strawblue.core.job.plan;

import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/** Chances as figures of the card. */
final class Chances {

    private Chances() {}

    /** Chance that {@code estimate} ends within {@code limits}. It is the spread already, so it has none of its own. */
    static Estimate within(Estimate estimate, Band limits) {
        return of(estimate.chanceWithin(limits), estimate);
    }

    static Estimate of(double chance, Estimate because) {
        return Estimate.of(Dimension.FRACTION, chance, chance, chance, because.bases());
    }
}
