package org.strawblue.core.assembly;

import org.strawblue.core.estimate.Constants;

/** The single named figures of this package. */
final class Figures {

    static final Constants ALL = Constants.of(Figures.class, "practice.csv");

    private Figures() {}
}
