package org.strawblue.core.spring;

import org.strawblue.core.table.Table;

/** How a spring's ends are held, which decides when it bows out. Figures lie in {@code seatings.csv}. */
public enum Seating {
    /** On two flat faces that stay parallel. */
    BOTH_FLAT,
    FLAT_AND_PIVOTED,
    BOTH_PIVOTED,
    /** One face flat, the other free to move sideways. */
    FLAT_AND_FREE;

    private final double factor;

    Seating() {
        factor = Table.of(Seating.class, "seatings.csv").rows().stream()
                .filter(r -> r.text("seating").equals(name()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("seatings.csv has no row " + name()))
                .number("factor");
    }

    /** Buckling length over free length [1]. */
    public double factor() {
        return factor;
    }
}
