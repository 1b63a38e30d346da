package org.strawblue.core.table;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A data table shipped with the program: comma-separated, header row first, lines that start with # are remarks. */
public record Table(String name, List<Row> rows) {

    public Table {
        rows = List.copyOf(rows);
    }

    /**
     * Reads a table that lies in the resource folder of {@code owner}'s package.
     *
     * @throws IllegalStateException where the resource is missing: the program was built wrong
     */
    public static Table of(Class<?> owner, String name) {
        try (InputStream in = owner.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("no data table " + name + " beside " + owner.getName());
            }
            return read(name, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Table read(String name, InputStream in) throws IOException {
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return new Table(
                    name,
                    csv.stream()
                            .map(r -> new Row(name, r.getStartingLineNumber(), r.getFieldsAsMap()))
                            .toList());
        }
    }
}
