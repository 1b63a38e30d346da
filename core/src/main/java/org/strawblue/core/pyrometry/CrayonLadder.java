package org.strawblue.core.pyrometry;

import java.util.List;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** The ratings melting crayons are commonly sold in, from {@code crayon_ladder.csv}. */
public final class CrayonLadder {

    private static final List<Double> RATINGS = Table.of(CrayonLadder.class, "crayon_ladder.csv").rows().stream()
            .map(CrayonLadder::kelvin)
            .sorted()
            .toList();

    private CrayonLadder() {}

    /** Rising [K]. */
    public static List<Double> ratings() {
        return RATINGS;
    }

    private static Double kelvin(Row row) {
        return Units.of(Dimension.TEMPERATURE, row.text("unit")).toSi(row.number("rating"));
    }
}
