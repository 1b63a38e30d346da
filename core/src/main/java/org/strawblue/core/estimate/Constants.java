package org.strawblue.core.estimate;

import java.util.HashMap;
import java.util.Map;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * Single named figures from a table with the columns {@code key, value, unit, source, standing} and, where wanted,
 * {@code low, high} (80 % interval or usual limits) and {@code what} (a few words).
 */
public record Constants(String table, Map<String, Row> rows) {

    /** Reads a table that lies beside {@code owner}. */
    public static Constants of(Class<?> owner, String table) {
        Map<String, Row> rows = new HashMap<>();
        Table.of(owner, table).rows().forEach(r -> rows.put(r.text("key"), r));
        return new Constants(table, rows);
    }

    /** The figure in the core's unit of {@code dimension}. */
    public double si(String key, Dimension dimension) {
        return si(key, dimension, "value");
    }

    /** A pure number. */
    public double number(String key) {
        return si(key, Dimension.NUMBER);
    }

    /** The figure in a unit that is no unit of a {@link Dimension}, which the table must name as given here. */
    public double inUnit(String key, String unit) {
        Row row = row(key);
        if (!row.text("unit").equals(unit)) {
            throw new IllegalStateException(table + ", " + key + ": in " + row.text("unit") + ", not " + unit);
        }
        return row.number("value");
    }

    /** The figure with its limits; where the table gives none, they are the figure itself. */
    public Estimate estimate(String key, Dimension dimension) {
        double value = si(key, dimension);
        return Estimate.of(
                dimension,
                value,
                orElse(key, dimension, "low", value),
                orElse(key, dimension, "high", value),
                basis(key));
    }

    public Basis basis(String key) {
        return basis(row(key).optionalText("what").orElse(key), key);
    }

    public Basis basis(String what, String key) {
        Row row = row(key);
        return new Basis(what, row.text("source"), Standing.of(row.text("standing")));
    }

    private double orElse(String key, Dimension dimension, String column, double value) {
        return row(key).optionalText(column).isPresent() ? si(key, dimension, column) : value;
    }

    private double si(String key, Dimension dimension, String column) {
        Row row = row(key);
        return Units.of(dimension, row.text("unit")).toSi(row.number(column));
    }

    private Row row(String key) {
        Row row = rows.get(key);
        if (row == null) {
            throw new IllegalStateException(table + " has no row " + key);
        }
        return row;
    }
}
