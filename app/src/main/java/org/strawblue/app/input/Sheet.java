package org.strawblue.app.input;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.Optional;

/**
 * A table being read row by row. Cells are parted by commas, semicolons or tabs, whichever the first row has most of;
 * rows that start with # are remarks.
 */
final class Sheet {

    private final TextFile file;
    private final char separator;
    private final CloseableIterator<CsvRecord> records;
    private Optional<Problem> broken = Optional.empty();

    Sheet(TextFile file) {
        this.file = file;
        this.separator = separator(file);
        this.records = CsvReader.builder()
                .fieldSeparator(separator)
                .commentStrategy(CommentStrategy.SKIP)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowUnclosedQuote(false)
                .allowExtraCharsAfterClosingQuote(true)
                .ofCsvRecord(file.text())
                .iterator();
    }

    /** The next row; absent at the end, and where the rest cannot be taken apart: then {@link #broken} says why. */
    Optional<CsvRecord> next() {
        try {
            return records.hasNext() ? Optional.of(records.next()) : Optional.empty();
        } catch (CsvParseException e) {
            broken = Optional.of(unclosed());
            return Optional.empty();
        }
    }

    /** Why the table ended before its end, if it did. */
    Optional<Problem> broken() {
        return broken;
    }

    char separator() {
        return separator;
    }

    private Problem unclosed() {
        int line = 1;
        while (line < file.lines().size() && quotes(file.lines().get(line - 1)) % 2 == 0) {
            line++;
        }
        int column = file.lines().get(line - 1).lastIndexOf('"') + 1;
        return new Problem(
                file.place(line, Math.max(1, column), column + 1),
                "a quote (\") that is not closed",
                "one row on each line",
                Optional.empty(),
                "Close the quote. For inches write in, or put the cell in quotes with its own doubled: \"1/4\"\"\".");
    }

    private static long quotes(String line) {
        return line.chars().filter(c -> c == '"').count();
    }

    static int line(CsvRecord row) {
        return (int) row.getStartingLineNumber();
    }

    /** Where a cell stands, counted from 0. */
    Place place(CsvRecord row, int cell) {
        String text = file.place(line(row), 1, 1).text();
        int from = 0;
        for (int i = 0; i < cell && from < text.length(); i++) {
            from = Math.min(text.length(), end(text, from) + 1);
        }
        int to = end(text, from);
        boolean quoted = to - from > 1 && text.charAt(from) == '"';
        int inset = quoted ? 1 : 0;
        return file.place(line(row), from + 1 + inset, to + 1 - inset);
    }

    /** The end of the cell that starts at {@code from}. */
    private int end(String text, int from) {
        boolean quoted = from < text.length() && text.charAt(from) == '"';
        boolean inside = quoted;
        for (int i = quoted ? from + 1 : from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted && c == '"') {
                inside = !inside;
            } else if (c == separator && !inside) {
                return i;
            }
        }
        return text.length();
    }

    /** The most frequent of the separators in the first row that is no remark. */
    private static char separator(TextFile file) {
        String first = file.lines().stream()
                .filter(l -> !l.isBlank() && !l.startsWith("#"))
                .findFirst()
                .orElse("");
        char best = ',';
        for (char c : new char[] {';', '\t'}) {
            best = count(first, c) > count(first, best) ? c : best;
        }
        return best;
    }

    private static long count(String text, char c) {
        return text.chars().filter(x -> x == c).count();
    }
}
