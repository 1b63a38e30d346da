package org.strawblue.core.fit;

import org.strawblue.core.estimate.Answer;

/** A standard's way to write a fit. */
interface FitStandard {

    /** Whether the text has the form of this standard, whatever its tables hold. */
    boolean reads(String designation);

    /** The fit for a nominal size [m], or why there is none. */
    Answer<Fit> fit(double nominal, String designation);
}
