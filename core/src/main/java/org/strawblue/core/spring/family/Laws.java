package org.strawblue.core.spring.family;

import org.strawblue.core.estimate.Constants;

/** The named coefficients of this package's laws. */
final class Laws {

    static final Constants OF = Constants.of(Laws.class, "laws.csv");

    private Laws() {}
}
