package org.strawblue.app.input;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/**
 * A table being read row by row. Cells are parted by commas, semicolons or tabs, whichever the first row has most of;
 * rows that start with # are remarks.
 */
final class Sheet {

    private static final int PEEK = 1 << 16;

    private final String name;
    private final char separator;
    private final CloseableIterator<CsvRecord> records;
    private Optional<Problem> broken = Optional.empty();

    Sheet(String name, Reader reader) throws IOException {
        this.name = name;
        BufferedReader peekable = new BufferedReader(reader, PEEK);
        this.separator = separator(peekable);
        this.records = CsvReader.builder()
                .fieldSeparator(separator)
                .commentStrategy(CommentStrategy.SKIP)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowUnclosedQuote(false)
                .allowExtraCharsAfterClosingQuote(true)
                .detectBomHeader(false)
                .ofCsvRecord(peekable)
                .iterator();
    }

    /** The next row; absent at the end, and where the rest cannot be taken apart: then {@link #broken} says why. */
    Optional<CsvRecord> next() {
        try {
            return records.hasNext() ? Optional.of(records.next()) : Optional.empty();
        } catch (CsvParseException | UncheckedIOException e) {
            broken = Optional.of(new Problem(
                    Place.of(name),
                    "a row that does not end",
                    "one row on each line",
                    Optional.empty(),
                    "A quote (\") is opened and not closed, or the file cannot be read to its end: look below the last"
                            + " good row."));
            return Optional.empty();
        }
    }

    Optional<Problem> broken() {
        return broken;
    }

    char separator() {
        return separator;
    }

    String name() {
        return name;
    }

    void close() {
        try {
            records.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where a cell stands, counted from 0; the line is written again from its cells. */
    Place place(CsvRecord row, int cell) {
        return place(
                Math.toIntExact(Math.min(row.getStartingLineNumber(), Integer.MAX_VALUE)), line(row.getFields()), cell);
    }

    /** Where a cell stands in a line as it is in the file. */
    Place place(int line, String text, int cell) {
        int from = 0;
        for (int i = 0; i < cell && from < text.length(); i++) {
            from = Math.min(text.length(), end(text, from) + 1);
        }
        int to = end(text, from);
        boolean quoted = from < to && text.charAt(from) == '"' && to - from > 1;
        int inset = quoted ? 1 : 0;
        return new Place(name, line, from + 1 + inset, Math.max(from + 2 + inset, to + 1 - inset), text);
    }

    /** The end of the cell that starts at {@code from}. */
    private int end(String text, int from) {
        boolean quoted = from < text.length() && text.charAt(from) == '"';
        boolean inside = quoted;
        for (int i = from + (quoted ? 1 : 0); i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted && c == '"') {
                inside = !inside;
            } else if (c == separator && !inside) {
                return i;
            }
        }
        return text.length();
    }

    private String line(List<String> cells) {
        StringBuilder out = new StringBuilder();
        for (String cell : cells) {
            out.append(out.isEmpty() ? "" : separator).append(quoted(cell));
        }
        return out.toString();
    }

    private String quoted(String cell) {
        boolean needed = cell.indexOf(separator) >= 0 || cell.indexOf('"') >= 0 || cell.indexOf('\n') >= 0;
        return needed ? '"' + cell.replace("\"", "\"\"").replace('\n', ' ') + '"' : cell;
    }

    /** The most frequent of the separators in the first row that is no remark. */
    private static char separator(BufferedReader reader) throws IOException {
        reader.mark(PEEK);
        char[] start = new char[PEEK - 1];
        int length = Math.max(0, reader.read(start));
        reader.reset();
        String first = new String(start, 0, length)
                .lines()
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
        boolean inside = false;
        long count = 0;
        for (int i = 0; i < text.length(); i++) {
            inside ^= text.charAt(i) == '"';
            count += !inside && text.charAt(i) == c ? 1 : 0;
        }
        return count;
    }
}
