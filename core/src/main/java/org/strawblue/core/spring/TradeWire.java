package org.strawblue.core.spring;

import java.util.List;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Table;

/** The metric sizes in which spring wire is drawn. */
public final class TradeWire {

    private static final List<Double> SIZES = Table.of(TradeWire.class, "wire_sizes.csv").rows().stream()
            .map(r -> r.number("wire_mm") * Units.of(Dimension.LENGTH, "mm").factor())
            .toList();

    private TradeWire() {}

    /** Diameters, the thinnest first [m]. */
    public static List<Double> sizes() {
        return SIZES;
    }
}
