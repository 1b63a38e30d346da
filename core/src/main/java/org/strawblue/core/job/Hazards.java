package org.strawblue.core.job;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** The cautions that {@code hazards.csv} holds, by key. */
public final class Hazards {

    private static final Map<String, Hazard> BY_KEY = load();

    private Hazards() {}

    /** The cautions of these keys, each once. @throws IllegalArgumentException where there is no such caution */
    public static List<Hazard> of(String... keys) {
        return Arrays.stream(keys).distinct().map(Hazards::find).toList();
    }

    private static Hazard find(String key) {
        Hazard hazard = BY_KEY.get(key);
        if (hazard == null) {
            throw new IllegalArgumentException("no caution '" + key + "'");
        }
        return hazard;
    }

    private static Map<String, Hazard> load() {
        Map<String, Hazard> byKey = new LinkedHashMap<>();
        for (Row row : Table.of(Hazards.class, "hazards.csv").rows()) {
            byKey.put(row.text("key"), new Hazard(row.text("key"), row.text("text"), row.text("again")));
        }
        return byKey;
    }
}
