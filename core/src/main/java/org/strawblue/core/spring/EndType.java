package org.strawblue.core.spring;

import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** How one end of a compression spring is formed. Figures lie in {@code ends.csv}. */
public enum EndType {
    /** Cut off and left so. */
    OPEN,
    /** Cut off and ground flat. */
    OPEN_GROUND,
    /** The last coil laid against its neighbour. */
    CLOSED,
    /** Closed, then ground flat. */
    CLOSED_GROUND;

    private final double inactive;
    private final double solidWires;
    private final double lengthPitches;
    private final double lengthWires;

    EndType() {
        Row row = Rows.row(name());
        inactive = row.number("inactive");
        solidWires = row.number("solid_wires");
        lengthPitches = row.number("length_pitches");
        lengthWires = row.number("length_wires");
    }

    /** Coils that this end takes out of work [1]. */
    public double inactive() {
        return inactive;
    }

    /** What this end adds to the solid length beyond coils × wire [wire diameters]. */
    public double solidWires() {
        return solidWires;
    }

    /** What this end adds to the free length [pitches]. */
    public double lengthPitches() {
        return lengthPitches;
    }

    /** What this end adds to the free length [wire diameters]. */
    public double lengthWires() {
        return lengthWires;
    }

    public boolean closed() {
        return this == CLOSED || this == CLOSED_GROUND;
    }

    public boolean ground() {
        return this == OPEN_GROUND || this == CLOSED_GROUND;
    }

    /** What the coil counts and lengths of ends rest on. */
    static Basis basis() {
        return Rows.BASIS;
    }

    /** The table, apart because an enum's own static fields are not there yet when its constants are made. */
    private static final class Rows {

        private static final Table TABLE = Table.of(EndType.class, "ends.csv");
        private static final Basis BASIS = basis(row("CLOSED"));

        private static Row row(String type) {
            return TABLE.rows().stream()
                    .filter(r -> r.text("type").equals(type))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("ends.csv has no row " + type));
        }

        private static Basis basis(Row row) {
            return new Basis("coils and lengths of spring ends", row.text("source"), Standing.of(row.text("standing")));
        }
    }
}
