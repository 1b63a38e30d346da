package org.strawblue.core.evidence.judge;

import org.strawblue.core.estimate.Constants;
import org.strawblue.core.quantity.Dimension;

/** Figures of how what is seen depends on what is so, from {@code looks.csv}. */
final class Looks {

    static final Constants ALL = Constants.of(Looks.class, "looks.csv");

    private Looks() {}

    static double number(String key) {
        return ALL.number(key);
    }

    static double kelvin(String key) {
        return ALL.si(key, Dimension.TEMPERATURE_DIFFERENCE);
    }

    static double hrc(String key) {
        return ALL.si(key, Dimension.HARDNESS);
    }

    static double length(String key) {
        return ALL.si(key, Dimension.LENGTH);
    }
}
