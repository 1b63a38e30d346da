package org.strawblue.core.steel;

import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;

/** Says how hard a steel is as quenched, by the carbon in its austenite. */
public interface AsQuenchedHardness {

    /** [HRC] of martensite with this carbon [mass %]. */
    Answer<Estimate> of(double carbonPercent);

    /** [HRC] of a grade fully hardened: found, or by the A255 polynomial with the dissolved carbon. */
    static Answer<Estimate> of(Grade grade) {
        return grade.found(Property.AS_QUENCHED)
                .map(Answer::of)
                .orElseGet(() -> A255Hardness.full()
                        .held(Austenite.percent(Austenite.carbon(grade).value())));
    }
}
