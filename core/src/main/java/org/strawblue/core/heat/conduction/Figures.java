package org.strawblue.core.heat.conduction;

import org.strawblue.core.estimate.Constants;
import org.strawblue.core.heat.course.Course;

/** Single figures of conduction, and those it shares with the fast model. */
final class Figures {

    static final Constants OWN = Constants.of(Figures.class, "conduction.csv");
    static final Constants SHARED = Constants.of(Course.class, "fast.csv");

    private Figures() {}
}
