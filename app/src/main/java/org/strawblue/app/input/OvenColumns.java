package org.strawblue.app.input;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** Which column of an oven's log is which, and in what unit its bare numbers are; the words lie in {@code oven-columns.csv}. */
final class OvenColumns {

    static final String TIME = "time";
    static final String TEMPERATURE = "temperature";
    static final String SET = "set";

    private static final Pattern PLAIN = Pattern.compile("[-+]?\\d{1,9}(\\.\\d{1,9})?");
    private static final Map<String, Row> KNOWN = known();
    private static final Lexicon HEADS = heads();
    /** T stands for time, and with a unit of temperature for that. */
    private static final Lexicon SHORT = new Lexicon(Map.of(TEMPERATURE, List.of("t")));

    private final UnitSystem system;
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final Map<String, Unit> units = new HashMap<>();
    private final Map<String, Expectation> expected = new HashMap<>();
    private boolean several = false;

    OvenColumns(UnitSystem system) {
        this.system = system;
    }

    private static Map<String, Row> known() {
        Map<String, Row> known = new LinkedHashMap<>();
        Table.of(OvenColumns.class, "oven-columns.csv").rows().forEach(r -> known.put(r.text("key"), r));
        return known;
    }

    private static Lexicon heads() {
        Map<String, List<String>> forms = new LinkedHashMap<>();
        KNOWN.forEach((key, row) -> forms.put(key, Lexicon.forms(row.text("also"))));
        return new Lexicon(forms);
    }

    private static Row row(String key) {
        return Optional.ofNullable(KNOWN.get(key)).orElseThrow();
    }

    static Dimension dimension(String key) {
        return Dimension.valueOf(row(key).text("dimension"));
    }

    static boolean plain(String text) {
        return PLAIN.matcher(text).matches();
    }

    /** Understands the first row; false where time or temperature is not in it. */
    boolean heads(List<String> row) {
        for (int i = 0; i < row.size(); i++) {
            head(row.get(i).strip(), i);
        }
        return has(TIME) && has(TEMPERATURE);
    }

    private void head(String text, int column) {
        Optional<Heading> heading = Heading.of(text, HEADS, key -> Optional.of(dimension(key)))
                .or(() -> Heading.of(text, SHORT, key -> Optional.of(Dimension.TEMPERATURE)));
        Optional<Unit> time = UnitWords.of(Dimension.TIME).find(text);
        Optional<Unit> temperature = UnitWords.of(Dimension.TEMPERATURE).find(text);
        if (heading.isPresent()) {
            keep(heading.get().key(), column, heading.get().unit());
        } else if (time.isPresent()) {
            keep(TIME, column, time);
        } else if (temperature.isPresent()) {
            keep(TEMPERATURE, column, temperature);
        }
    }

    /** The first column of a kind counts; others are other sensors, or remarks. */
    private void keep(String key, int column, Optional<Unit> unit) {
        if (columns.putIfAbsent(key, column) == null) {
            unit.ifPresent(u -> units.put(key, u));
        } else {
            several |= key.equals(TEMPERATURE);
        }
    }

    /** A row of nothing but readings, with no heads above it: times, then temperatures. */
    boolean bareNumbers(List<String> row) {
        return row.size() >= 2 && plain(row.get(0).strip()) && plain(row.get(1).strip());
    }

    void assumeHeads() {
        columns.put(TIME, 0);
        columns.put(TEMPERATURE, 1);
    }

    boolean has(String key) {
        return columns.containsKey(key);
    }

    /** Whether there is more than one column of temperatures. */
    boolean several() {
        return several;
    }

    /** Whether the unit of temperatures stands in their head. */
    boolean temperaturesNamed() {
        return units.containsKey(TEMPERATURE);
    }

    /** Where a column stands, counted from 0; -1 where there is none. */
    int at(String key) {
        return columns.getOrDefault(key, -1);
    }

    /** What a bare number in a column is meant in; a setting without a unit is in that of the oven. */
    Unit bare(String key) {
        Unit named = units.get(key);
        if (named != null) {
            return named;
        }
        if (key.equals(TIME)) {
            return Units.of(Dimension.TIME, "s");
        }
        Unit oven = units.get(TEMPERATURE);
        return oven != null ? oven : Units.of(Dimension.TEMPERATURE, system == UnitSystem.INCH ? "°F" : "°C");
    }

    /** What is to be expected of a cell, once the heads are read. */
    Expectation expected(String key) {
        return expected.computeIfAbsent(key, this::expectation);
    }

    private Expectation expectation(String key) {
        Expectation any = Expectation.of(dimension(key), system).bare(bare(key));
        Row row = row(key);
        if (row.optionalNumber("low").isEmpty()) {
            return any;
        }
        Unit unit = Units.of(dimension(key), row.text("unit"));
        return any.within(new Band(dimension(key), unit.toSi(row.number("low")), unit.toSi(row.number("high"))));
    }
}
