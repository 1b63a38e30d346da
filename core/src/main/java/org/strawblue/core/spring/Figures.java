package org.strawblue.core.spring;

import org.strawblue.core.estimate.Constants;

/** The single named figures of this package. */
final class Figures {

    /** Coefficients of the laws. */
    static final Constants FORMULAS = Constants.of(Figures.class, "formulas.csv");

    /** What the search takes for granted. */
    static final Constants PRACTICE = Constants.of(Figures.class, "practice.csv");

    /** What callipers and counting leave open. */
    static final Constants MEASUREMENT = Constants.of(Figures.class, "measurement.csv");

    private Figures() {}
}
