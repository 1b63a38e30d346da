package org.strawblue.core.evidence.observe;

import org.strawblue.core.estimate.Constants;

/** How well an eye picks a swatch. */
final class Picking {

    static final Constants FIGURES = Constants.of(Picking.class, "observe.csv");

    /** A picked film may be so many times thinner or thicker than the true one [1]. */
    static final double FACTOR = FIGURES.number("picked-factor");

    private Picking() {}
}
