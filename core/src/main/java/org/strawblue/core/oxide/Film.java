package org.strawblue.core.oxide;

import org.strawblue.core.estimate.Constants;
import org.strawblue.core.quantity.Dimension;

/** The numbers of {@code film.csv}. */
final class Film {

    static final Constants ALL = Constants.of(Film.class, "film.csv");

    private Film() {}

    static double number(String key) {
        return ALL.number(key);
    }

    /** [m] */
    static double length(String key) {
        return ALL.si(key, Dimension.LENGTH);
    }
}
