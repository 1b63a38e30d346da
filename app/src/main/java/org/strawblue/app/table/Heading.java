package org.strawblue.app.table;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.strawblue.app.input.Lexicon;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * A column heading as people write it: {@code temperature}, {@code temperature_c}, {@code Temperature (°C)},
 * {@code time [h]}, {@code Mn_pct}, {@code C (%wt)}.
 *
 * @param column our name of it, from {@code columns.csv}
 * @param unit of a bare number below it, where the heading tells
 */
record Heading(String column, Optional<Unit> unit) {

    private static final Map<String, Row> COLUMNS = columns();
    private static final Lexicon WORDS = words();
    private static final Pattern BRACKETS = Pattern.compile("[(\\[]([^)\\]]*)[)\\]]");
    private static final Pattern PERCENT =
            Pattern.compile("(?i)%|\\b(pct|percent|wt|weight|mass)\\b|(?<=_)(pct|percent|wt|mass)(?![a-z])");

    /** The heading, where it is one of ours. */
    static Optional<Heading> read(String text) {
        String raw = text.strip();
        // the symbols of a formula are the one case in which capitals count
        if (raw.equals("T") || raw.equals("t")) {
            return Optional.of(new Heading(raw.equals("T") ? "temperature" : "time", Optional.empty()));
        }
        Matcher brackets = BRACKETS.matcher(raw);
        if (!brackets.find()) {
            return plain(raw);
        }
        String unit = brackets.group(1);
        String name = raw.substring(0, brackets.start()) + " "
                + raw.substring(brackets.end()).replace("-", " ");
        return bracketed(name.strip(), unit);
    }

    private static Optional<Heading> bracketed(String name, String unit) {
        return known(name).flatMap(column -> withUnit(column, unit));
    }

    /** A unit at the end goes first: {@code time_s} is a time in seconds, not a number of times. */
    private static Optional<Heading> plain(String raw) {
        int cut = Math.max(raw.lastIndexOf('_'), Math.max(raw.lastIndexOf(' '), raw.lastIndexOf('-')));
        Optional<Heading> split = cut < 1
                ? Optional.empty()
                : known(raw.substring(0, cut)).flatMap(column -> withUnit(column, raw.substring(cut + 1)));
        return split.filter(h -> h.unit().isPresent())
                .or(() -> known(raw).map(column -> new Heading(column, Optional.empty())))
                .or(() -> split);
    }

    private static Optional<String> known(String name) {
        return WORDS.find(name)
                .or(() -> WORDS.find(
                        PERCENT.matcher(name).replaceAll(" ").replace('_', ' ').strip()));
    }

    /** Absent where the unit is none of that column's: it is then another thing. */
    private static Optional<Heading> withUnit(String column, String unitText) {
        Optional<Dimension> dimension = dimension(column);
        if (dimension.isEmpty()) {
            return Optional.of(new Heading(column, Optional.empty()));
        }
        String unit = unitText.strip();
        if (dimension.get() == Dimension.NUMBER) {
            return PERCENT.matcher(unit).replaceAll("").isBlank()
                    ? Optional.of(new Heading(column, Optional.empty()))
                    : Optional.empty();
        }
        return unit(dimension.get(), unit).map(u -> new Heading(column, Optional.of(u)));
    }

    private static Optional<Unit> unit(Dimension dimension, String text) {
        return Units.find(dimension, text)
                .or(() -> Optional.ofNullable(
                        byLowerCase(dimension).get(text.toLowerCase(Locale.ROOT).replace('_', ' '))));
    }

    private static Map<String, Unit> byLowerCase(Dimension dimension) {
        Map<String, Unit> units = new HashMap<>();
        Units.all().stream()
                .filter(u -> u.dimension() == dimension)
                .forEach(u -> u.names().forEach(n -> units.putIfAbsent(n.toLowerCase(Locale.ROOT), u)));
        return units;
    }

    /** What a column measures; absent for words. */
    static Optional<Dimension> dimension(String column) {
        return row(column).optionalText("dimension").map(Dimension::valueOf);
    }

    /** The unit of a bare number where neither heading nor cell tells. */
    static Unit bare(String column, boolean inch) {
        return Units.of(dimension(column).orElseThrow(), row(column).text(inch ? "inch" : "metric"));
    }

    /** The known heading most like this one. */
    static Optional<String> nearest(String text) {
        return WORDS.nearest(text);
    }

    private static Row row(String column) {
        Row row = COLUMNS.get(column);
        if (row == null) {
            throw new IllegalArgumentException("columns.csv has no row " + column);
        }
        return row;
    }

    private static Map<String, Row> columns() {
        Map<String, Row> columns = new LinkedHashMap<>();
        Table.of(Heading.class, "columns.csv").rows().forEach(r -> columns.put(r.text("column"), r));
        return columns;
    }

    private static Lexicon words() {
        Map<String, List<String>> words = new LinkedHashMap<>();
        COLUMNS.forEach((column, row) -> words.put(
                column, List.of(row.optionalText("words").orElse(column).split("\\|"))));
        return new Lexicon(words);
    }
}
