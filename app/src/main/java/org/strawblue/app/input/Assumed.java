package org.strawblue.app.input;

import org.strawblue.core.table.Table;

/** What is taken for a size that the person does not know, from {@code assumed.csv}. */
final class Assumed {

    private static final Table TABLE = Table.of(Assumed.class, "assumed.csv");

    private Assumed() {}

    static double of(String what) {
        return TABLE.rows().stream()
                .filter(r -> r.text("what").equals(what))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("assumed.csv has no row " + what))
                .number("value");
    }
}
