package org.strawblue.core.heat.course;

/** Heat on its way into a part: worked out anew for every step, so the fields may change. */
final class Flow {

    /** Into the whole part [W]. */
    double heat;
    /** What it would fall by if the part were a kelvin hotter [W/K]. */
    double slope;
    /** Underside, top and core less the mean temperature [K]. */
    double underside;

    double top;
    double core;
}
