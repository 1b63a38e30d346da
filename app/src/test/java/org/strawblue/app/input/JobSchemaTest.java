package org.strawblue.app.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The schema that editors use is that of the keys the reader knows, and every example keeps to it. */
class JobSchemaTest {

    private static final Path ROOT = Path.of(System.getProperty("strawblue.root"));
    private static final Path SHIPPED = ROOT.resolve("schema").resolve("strawblue-job.schema.json");

    static List<Path> examples() throws IOException {
        return ExamplesTest.examples();
    }

    @Test
    void theShippedSchemaIsThatOfTheKeysTheReaderKnows() throws IOException {
        if (Boolean.getBoolean("strawblue.write")) {
            Files.writeString(SHIPPED, JobSchema.json());
        }
        assertThat(Files.readString(SHIPPED))
                .as("keys, words or catalogues have changed: run this test with -Dstrawblue.write=true")
                .isEqualTo(JobSchema.json());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleKeepsToIt(Path example) throws IOException {
        assertThat(SmallValidator.faults(load(Files.readString(SHIPPED)), load(Files.readString(example))))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "parts: []",
                "{title: t, parst: []}",
                "{title: t, parts: [{steel: O1}]}",
                "{title: t, parts: [{name: p, steel: {Mn: 1}}]}",
                "{title: t, parts: [{name: p, temper: {when: later}}]}",
                "{title: t, shop: {tempering heat: [{error: 3 C}]}}",
            })
    void aFileThatStraysFromItIsFound(String text) throws IOException {
        assertThat(SmallValidator.faults(load(Files.readString(SHIPPED)), load(text)))
                .isNotEmpty();
    }

    @Test
    void theGuideNamesEveryKey() throws IOException {
        String guide = Files.readString(ROOT.resolve("docs/guide/job-file.md")).replaceAll("\\s+", " ");
        assertThat(Field.all().stream().map(Field::key)).allMatch(guide::contains);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> load(String text) {
        return (Map<String, Object>) new Load(LoadSettings.builder().build()).loadFromString(text);
    }
}
