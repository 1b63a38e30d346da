package org.strawblue.core.evidence.sample;

/** How likely what was seen is, were one history of an ensemble the true one. */
@FunctionalInterface
public interface Likelihood {

    /** Natural logarithm, up to a constant; minus infinity where it cannot be. */
    double log(Ensemble ensemble, int draw);
}
