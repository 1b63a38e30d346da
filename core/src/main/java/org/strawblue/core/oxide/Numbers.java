package org.strawblue.core.oxide;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** A table of named numbers: columns name, value, unit, source, standing. */
record Numbers(String about, Map<String, Row> rows) {

    private static final double NANO = 1e-9;

    static final Numbers FILM = of("film", "film.csv");
    static final Numbers CHROMIUM = of("chromium and colour", "chromium.csv");

    private static Numbers of(String about, String file) {
        return new Numbers(
                about,
                Table.of(Numbers.class, file).rows().stream()
                        .collect(Collectors.toUnmodifiableMap(r -> r.text("name"), r -> r)));
    }

    /** The number, lengths in metres. */
    double get(String name) {
        Row row = row(name);
        return row.number("value") * (row.text("unit").equals("nm") ? NANO : 1);
    }

    Basis basis(String name) {
        Row row = row(name);
        return new Basis(about + ": " + name.replace('_', ' '), row.text("source"), Standing.of(row.text("standing")));
    }

    private Row row(String name) {
        return Optional.ofNullable(rows.get(name)).orElseThrow(() -> new IllegalStateException("no " + name));
    }
}
