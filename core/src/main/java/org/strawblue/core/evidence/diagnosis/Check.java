package org.strawblue.core.evidence.diagnosis;

import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;

/**
 * What the program reckons of one cause from what is known of the job.
 *
 * @param chance that it is so [1]
 * @param because in a sentence
 */
record Check(double chance, Phrase because, Basis basis) {

    /** What a check rests on where its law is worked out here and a figure in it is assumed. */
    static Basis assumed(String what) {
        return new Basis(what, "strawblue", Standing.ASSUMED);
    }
}
