package org.strawblue.core.table;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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
        List<Row> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .ofCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            List<String> head = List.of();
            for (CsvRecord record : csv) {
                if (head.isEmpty()) {
                    head = record.getFields();
                } else {
                    rows.add(new Row(name, record.getStartingLineNumber(), cells(head, record.getFields())));
                }
            }
        }
        return new Table(name, rows);
    }

    private static Map<String, String> cells(List<String> head, List<String> fields) {
        Map<String, String> cells = new HashMap<>();
        for (int i = 0; i < head.size(); i++) {
            cells.put(head.get(i), fields.get(i));
        }
        return cells;
    }
}
