package org.strawblue.core.table;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** One row of a {@link Table}, its cells by column name. A blank cell is absent. */
public record Row(String table, long line, Map<String, String> cells) {

    public Row {
        cells = Map.copyOf(cells);
    }

    /** The cell's text. @throws IllegalStateException where it is blank or no such column exists */
    public String text(String column) {
        return optionalText(column).orElseThrow(() -> fault(column, "a text"));
    }

    public Optional<String> optionalText(String column) {
        return Optional.ofNullable(cells.get(column)).filter(s -> !s.isBlank());
    }

    /** The cell's number, in the unit the column's name states. @throws IllegalStateException where it is none */
    public double number(String column) {
        return optionalNumber(column).orElseThrow(() -> fault(column, "a number"));
    }

    public OptionalDouble optionalNumber(String column) {
        Optional<String> text = optionalText(column);
        return text.isPresent() ? OptionalDouble.of(parse(column, text.get())) : OptionalDouble.empty();
    }

    private double parse(String column, String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw fault(column, "a number, not '" + text + "'");
        }
    }

    private IllegalStateException fault(String column, String expected) {
        return new IllegalStateException(table + " line " + line + ", column " + column + ": expected " + expected);
    }
}
