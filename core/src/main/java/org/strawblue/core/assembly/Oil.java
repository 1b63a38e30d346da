package org.strawblue.core.assembly;

import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** What to oil a slide with, by its least clearance; {@code oils.csv}. */
public record Oil(String name, String why) {

    private static final Unit MICRON = Units.of(Dimension.LENGTH, "µm");

    /** @param clearance least clearance of diameters [m] */
    public static Oil of(double clearance) {
        Oil oil = null;
        for (Row row : Table.of(Oil.class, "oils.csv").rows()) {
            if (oil == null || MICRON.toSi(row.number("from_um")) <= clearance) {
                oil = new Oil(row.text("oil"), row.text("why"));
            }
        }
        return java.util.Objects.requireNonNull(oil);
    }
}
