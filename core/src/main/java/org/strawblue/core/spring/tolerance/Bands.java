package org.strawblue.core.spring.tolerance;

import org.strawblue.core.estimate.Constants;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Row;

/** Reads rows that hold over one size and up to another. */
final class Bands {

    static final Constants PRACTICE = Constants.of(Bands.class, "practice.csv");
    static final Unit MM = Units.of(Dimension.LENGTH, "mm");
    static final Unit INCH = Units.of(Dimension.LENGTH, "in");

    private Bands() {}

    /** Whether the value lies over {@code from} and up to {@code upto}; what is exactly the least size belongs to it. */
    static boolean holds(Row row, String from, String upto, double value) {
        return value > row.number(from) && value <= row.number(upto);
    }
}
