package org.strawblue.core.steel;

import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;

/**
 * Rockwell C to Vickers and back, by the table of ASTM E140 for steels, straight lines between its rows; 20 to 68 HRC,
 * 238 to 940 HV.
 */
public final class HardnessConversion {

    private HardnessConversion() {}

    /** [HRC] to [HV]. */
    public static Answer<Estimate> vickers(double hrc) {
        throw new UnsupportedOperationException();
    }

    /** [HV] to [HRC]. */
    public static Answer<Estimate> rockwell(double hv) {
        throw new UnsupportedOperationException();
    }
}
