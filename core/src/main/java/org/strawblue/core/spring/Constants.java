package org.strawblue.core.spring;

import java.util.HashMap;
import java.util.Map;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** Single named figures of this package, from a table with the columns key, value, unit, source, standing. */
record Constants(String table, Map<String, Row> rows) {

    /** Coefficients of the laws. */
    static final Constants FORMULAS = of("formulas.csv");

    /** What the search takes for granted. */
    static final Constants PRACTICE = of("practice.csv");

    static Constants of(String table) {
        Map<String, Row> rows = new HashMap<>();
        Table.of(Constants.class, table).rows().forEach(r -> rows.put(r.text("key"), r));
        return new Constants(table, rows);
    }

    /** The figure in the core's unit of {@code dimension}. */
    double si(String key, Dimension dimension) {
        Row row = row(key);
        return Units.of(dimension, row.text("unit")).toSi(row.number("value"));
    }

    /** A pure number. */
    double number(String key) {
        return si(key, Dimension.NUMBER);
    }

    Basis basis(String what, String key) {
        Row row = row(key);
        return new Basis(what, row.text("source"), Standing.of(row.text("standing")));
    }

    private Row row(String key) {
        Row row = rows.get(key);
        if (row == null) {
            throw new IllegalStateException(table + " has no row " + key);
        }
        return row;
    }
}
