package org.strawblue.core.evidence.learn;

import org.strawblue.core.estimate.Constants;
import org.strawblue.core.quantity.Dimension;

/** Figures of learning, from {@code learning.csv}. */
final class Figures {

    static final Constants ALL = Constants.of(Figures.class, "learning.csv");

    private Figures() {}

    static double number(String key) {
        return ALL.number(key);
    }

    static double kelvin(String key) {
        return ALL.si(key, Dimension.TEMPERATURE_DIFFERENCE);
    }

    static double seconds(String key) {
        return ALL.si(key, Dimension.TIME);
    }
}
