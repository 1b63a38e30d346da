package org.strawblue.app.table;

import java.util.List;
import org.strawblue.core.estimate.Finding;

/**
 * The answer to one row.
 *
 * @param values for the added columns, or empty where there is no answer
 */
record RowAnswer(List<String> values, List<Finding> findings) {

    static final RowAnswer NONE = new RowAnswer(List.of(), List.of());

    /** With two decimals at most, the same in every locale. */
    static String hundredths(double value) {
        return Double.toString(Math.round(value * 100) / 100.0);
    }
}
