package org.strawblue.core.quantity;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** Every unit the program reads or prints, from {@code units.csv}. */
public final class Units {

    private static final List<Unit> ALL =
            Table.of(Units.class, "units.csv").rows().stream().map(Units::unit).toList();

    private Units() {}

    public static List<Unit> all() {
        return ALL;
    }

    /** The unit of a dimension that people write as {@code name}; upper and lower case count. */
    public static Optional<Unit> find(Dimension dimension, String name) {
        for (Unit unit : ALL) {
            if (unit.dimension() == dimension && unit.names().contains(name)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /** The unit printed as {@code symbol}. @throws IllegalArgumentException where there is none */
    public static Unit of(Dimension dimension, String symbol) {
        return find(dimension, symbol)
                .orElseThrow(() -> new IllegalArgumentException("no unit " + symbol + " of " + dimension));
    }

    private static Unit unit(Row row) {
        Set<String> names =
                new HashSet<>(Arrays.asList(row.optionalText("also").orElse("").split("\\|")));
        names.remove("");
        names.add(row.text("symbol"));
        return new Unit(
                row.text("symbol"),
                Dimension.valueOf(row.text("dimension")),
                row.number("factor"),
                row.number("offset"),
                names);
    }
}
