package org.strawblue.core.steel;

import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;

/** Says where martensite starts to form, from what the austenite is made of. */
public interface MartensiteStart {

    /** Ms [K] of austenite of this composition; its carbon is what is dissolved, not what the steel holds. */
    Answer<Estimate> of(Composition austenite);

    /** Ms [K] of a grade: found where the catalogue has it, else by {@link Barbier} with the dissolved carbon. */
    static Answer<Estimate> of(Grade grade) {
        return grade.found(Property.MARTENSITE_START)
                .map(Answer::of)
                .orElseGet(() -> new Barbier().of(Austenite.of(grade)));
    }
}
