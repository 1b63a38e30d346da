package org.strawblue.app.proof;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.strawblue.core.source.Bibliography;
import org.strawblue.core.source.Standing;

/** Reads the case files: comma-separated, a header row, lines that start with # are remarks. */
public final class CaseFile {

    private CaseFile() {}

    /** Every case of a folder, file by file in the order of their names. */
    public static List<Case> readAll(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            List<Case> all = files.filter(f -> f.toString().endsWith(".csv"))
                    .sorted()
                    .flatMap(f -> read(f).stream())
                    .toList();
            requireDistinct(all);
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @throws IllegalArgumentException that names the file and line of a case that cannot be read */
    public static List<Case> read(Path file) {
        try (CsvReader<NamedCsvRecord> csv =
                CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(file)) {
            List<Case> cases = new ArrayList<>();
            for (NamedCsvRecord record : csv) {
                cases.add(read(file, record));
            }
            return cases;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Case read(Path file, NamedCsvRecord record) {
        try {
            return read(record);
        } catch (RuntimeException e) {
            throw new IllegalArgumentException(
                    file.getFileName() + " line " + record.getStartingLineNumber() + ": " + e.getMessage(), e);
        }
    }

    private static Case read(NamedCsvRecord record) {
        return new Case(
                required(record, "id"),
                required(record, "what"),
                required(record, "operation"),
                Inputs.parse(record.getField("inputs")),
                Expected.parse(required(record, "expected"), record.getField("tolerance")),
                record.getField("unit").trim(),
                source(required(record, "source")),
                Standing.of(required(record, "standing")),
                control(required(record, "kind")));
    }

    private static String required(NamedCsvRecord record, String column) {
        String text = record.getField(column).trim();
        if (text.isEmpty()) {
            throw new IllegalArgumentException("column " + column + " is blank");
        }
        return text;
    }

    private static String source(String key) {
        if (Bibliography.find(key).isEmpty()) {
            throw new IllegalArgumentException("source '" + key + "' is not in the bibliography");
        }
        return key;
    }

    private static boolean control(String kind) {
        return switch (kind) {
            case "check" -> false;
            case "control" -> true;
            default -> throw new IllegalArgumentException("kind is check or control, not '" + kind + "'");
        };
    }

    private static void requireDistinct(List<Case> cases) {
        Set<String> ids = new HashSet<>();
        for (Case c : cases) {
            if (!ids.add(c.id())) {
                throw new IllegalArgumentException("two cases have the id " + c.id());
            }
        }
    }
}
