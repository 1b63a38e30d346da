package org.strawblue.core.spring.wind;

import org.strawblue.core.estimate.Constants;

/** The single named figures of this package. */
final class Practice {

    static final Constants OF = Constants.of(Practice.class, "practice.csv");

    private Practice() {}
}
