package org.strawblue.core.evidence.diagnosis;

import org.strawblue.core.estimate.Constants;
import org.strawblue.core.source.Basis;

/** Figures of diagnosis, from {@code diagnosis.csv}. */
final class Figures {

    static final Constants ALL = Constants.of(Figures.class, "diagnosis.csv");

    private Figures() {}

    static double number(String key) {
        return ALL.number(key);
    }

    static Basis spread() {
        return ALL.basis("how far the shares of causes and clues may be off", "weight-spread");
    }
}
