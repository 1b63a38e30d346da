package org.strawblue.core.evidence.judge;

import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.evidence.sample.Likelihood;

/** What one observation says of each history: how likely it is there, and how likely something lower, or higher, still is. */
interface Clue extends Likelihood {

    /** Chance [1] of this or anything lower in that history. */
    double atMost(Ensemble ensemble, int draw);

    /** Chance [1] of this or anything higher. */
    double atLeast(Ensemble ensemble, int draw);
}
