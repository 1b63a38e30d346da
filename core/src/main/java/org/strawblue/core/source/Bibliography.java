package org.strawblue.core.source;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** The one bibliography: every source key used in a data file, a check case or a result is in it. */
public final class Bibliography {

    private static final List<String> FILES =
            List.of("general.csv", "steel.csv", "heat.csv", "colour.csv", "springs.csv", "fits.csv");

    private static final Map<String, Source> BY_KEY = load();

    private Bibliography() {}

    public static Optional<Source> find(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }

    public static List<Source> all() {
        return List.copyOf(BY_KEY.values());
    }

    private static Map<String, Source> load() {
        Map<String, Source> byKey = new LinkedHashMap<>();
        for (String file : FILES) {
            for (Row row : Table.of(Bibliography.class, file).rows()) {
                Source source = new Source(
                        row.text("key"),
                        row.text("title"),
                        row.optionalText("address").orElse(""));
                if (byKey.put(source.key(), source) != null) {
                    throw new IllegalStateException("source key twice in the bibliography: " + source.key());
                }
            }
        }
        return byKey;
    }
}
