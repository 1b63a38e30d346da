package org.strawblue.core.evidence.diagnosis;

import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Phrase;

/**
 * A cause and its chance.
 *
 * @param chance [1]
 * @param because what the program reckoned of it
 */
public record Ranked(Cause cause, Estimate chance, Optional<Phrase> because) {

    /** Its chance in a word. */
    public String words() {
        double p = chance.value();
        if (p >= Figures.number("sure")) {
            return "very likely";
        }
        if (p >= Figures.number("likely")) {
            return "likely";
        }
        return p >= Figures.number("possible") ? "possible" : "unlikely";
    }
}
