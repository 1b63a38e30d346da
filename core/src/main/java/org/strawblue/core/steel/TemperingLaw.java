package org.strawblue.core.steel;

import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;

/** Says how hard a quenched steel is after tempering. */
public interface TemperingLaw {

    /** The exchange of time for temperature in this steel. */
    HollomonJaffe exchange();

    /** Hardness [HRC] after one hold of the metal at one temperature; outside the law's range, why not. */
    Answer<Estimate> hardness(Temper temper);

    /** Standard deviation [HRC] of a new heat about the law, before anything of the bar is measured. */
    double spread();
}
