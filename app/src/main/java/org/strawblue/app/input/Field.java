package org.strawblue.app.input;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * One key of a job file, from {@code fields.csv}.
 *
 * @param kind what its value is: text, word, quantity, band, size, group, groups, things, list
 * @param family of words, or section of keys, that its value is made of
 */
record Field(
        String section,
        String key,
        List<String> also,
        String kind,
        Optional<String> family,
        Optional<Dimension> dimension,
        Optional<Band> range,
        boolean required,
        String description) {

    private static final Map<String, Map<String, Field>> BY_SECTION = sorted("fields.csv");

    private static final Map<String, Lexicon> LEXICONS = new ConcurrentHashMap<>();

    static List<Field> all() {
        return BY_SECTION.values().stream().flatMap(m -> m.values().stream()).toList();
    }

    /** The keys of one section. */
    static List<Field> of(String section) {
        return List.copyOf(keys(section).values());
    }

    static Field of(String section, String key) {
        return Optional.ofNullable(keys(section).get(key))
                .orElseThrow(() -> new IllegalArgumentException("no key " + key + " in " + section));
    }

    private static Map<String, Field> keys(String section) {
        Map<String, Field> ofJobs = BY_SECTION.get(section);
        return ofJobs != null ? ofJobs : Logs.BY_SECTION.getOrDefault(section, Map.of());
    }

    /** The keys of a log of what was seen, read when one is. */
    private static final class Logs {

        private static final Map<String, Map<String, Field>> BY_SECTION = sorted("log-fields.csv");
    }

    private static Map<String, Map<String, Field>> sorted(String table) {
        Map<String, Map<String, Field>> sections = new LinkedHashMap<>();
        Table.of(Field.class, table).rows().stream()
                .map(Field::of)
                .forEach(f -> sections.computeIfAbsent(f.section, s -> new LinkedHashMap<>())
                        .put(f.key, f));
        return sections;
    }

    /** The keys of a section with their other forms. */
    static Lexicon lexicon(String section) {
        return LEXICONS.computeIfAbsent(section, Field::words);
    }

    private static Lexicon words(String section) {
        Map<String, List<String>> words = new LinkedHashMap<>();
        of(section).forEach(f -> words.put(f.key, f.also));
        return new Lexicon(words);
    }

    Expectation expectation(UnitSystem units) {
        Expectation any = Expectation.of(dimension.orElseThrow(), units);
        return range.map(any::within).orElse(any);
    }

    private static Field of(Row row) {
        Optional<Dimension> dimension = row.optionalText("dimension").map(Dimension::valueOf);
        return new Field(
                row.text("section"),
                row.text("key"),
                Lexicon.forms(row.optionalText("also").orElse("")),
                row.text("kind"),
                row.optionalText("family"),
                dimension,
                dimension.map(d -> range(d, row)),
                row.optionalText("required").isPresent(),
                row.text("description"));
    }

    private static Band range(Dimension dimension, Row row) {
        Unit unit = Units.of(dimension, row.text("unit"));
        return new Band(dimension, unit.toSi(row.number("low")), unit.toSi(row.number("high")));
    }
}
