package org.strawblue.core.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every data file of the core must keep to. */
class DataFilesTest {

    /** Columns in which a figure is a name: grade 1084 is not a number. */
    private static final List<String> NAMES = List.of("grade", "name", "key", "word", "equivalents");

    private static final Path RESOURCES = Path.of("src/main/resources/org/strawblue/core");

    /** Every table that holds a number; lists of words alone need no source. */
    static Stream<Path> dataFiles() throws IOException {
        try (Stream<Path> files = Files.walk(RESOURCES)) {
            return files
                    .filter(f -> f.toString().endsWith(".csv"))
                    .filter(f -> !f.startsWith(RESOURCES.resolve("source")))
                    .filter(DataFilesTest::holdsFigures)
                    .toList()
                    .stream();
        }
    }

    private static boolean holdsFigures(Path file) {
        try {
            return rows(file).stream().anyMatch(DataFilesTest::holdsFigures);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean holdsFigures(NamedCsvRecord row) {
        return row.getFieldsAsMap().entrySet().stream()
                .anyMatch(cell ->
                        !NAMES.contains(cell.getKey()) && cell.getValue().matches("-?\\d+(\\.\\d+)?"));
    }

    @ParameterizedTest
    @MethodSource("dataFiles")
    void everyRowNamesASourceThatIsInTheBibliographyAndAKnownStanding(Path file) throws IOException {
        List<NamedCsvRecord> rows = rows(file);
        assertThat(rows).isNotEmpty();
        for (NamedCsvRecord row : rows) {
            String place = file + ":" + row.getStartingLineNumber();
            Map<String, String> cells = row.getFieldsAsMap();
            assertThat(cells).as(place).containsKeys("source", "standing");
            for (String key : cells.get("source").split("[|+]")) {
                assertThat(Bibliography.find(key.strip()))
                        .as(place + " source '" + key + "'")
                        .isPresent();
            }
            assertThat(Standing.of(cells.get("standing"))).as(place).isNotNull();
        }
    }

    @ParameterizedTest
    @MethodSource("dataFiles")
    void whatRestsOnMemoryOrAssumptionSaysSoBothWays(Path file) throws IOException {
        for (NamedCsvRecord row : rows(file)) {
            String place = file + ":" + row.getStartingLineNumber();
            if (row.getField("source").equals("from-memory")
                    || row.getField("source").equals("assumed")) {
                assertThat(Standing.of(row.getField("standing")).weak()
                                || row.getField("standing").equals("common-practice"))
                        .as(place)
                        .isTrue();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("dataFiles")
    void lowIsNotAboveHigh(Path file) throws IOException {
        for (NamedCsvRecord row : rows(file)) {
            Map<String, String> cells = row.getFieldsAsMap();
            String low = cells.getOrDefault("low", "");
            String high = cells.getOrDefault("high", "");
            if (!low.isBlank() && !high.isBlank()) {
                assertThat(Double.parseDouble(low))
                        .as(file + ":" + row.getStartingLineNumber())
                        .isLessThanOrEqualTo(Double.parseDouble(high));
            }
        }
    }

    @Test
    void theBibliographyKnowsWhatItHoldsAndNothingElse() {
        assertThat(Bibliography.find("si-brochure")).isPresent();
        assertThat(Bibliography.find("hearsay")).isEmpty();
        assertThat(Bibliography.all()).allSatisfy(s -> {
            assertThat(s.key()).matches("[a-z0-9-]+");
            assertThat(s.title()).isNotBlank();
        });
    }

    @Test
    void standingsAreReadByTheirWords() {
        for (Standing standing : Standing.values()) {
            assertThat(Standing.of(standing.word())).isEqualTo(standing);
        }
        assertThatThrownBy(() -> Standing.of("gospel")).hasMessageContaining("gospel");
        assertThat(Standing.FROM_MEMORY.weak()).isTrue();
        assertThat(Standing.HANDBOOK.weak()).isFalse();
    }

    private static List<NamedCsvRecord> rows(Path file) throws IOException {
        try (CsvReader<NamedCsvRecord> csv =
                CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(file)) {
            return csv.stream().toList();
        }
    }
}
