package org.strawblue.app.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.job.Job;

/** The examples that a newcomer copies can be read, without a single problem. */
class ExamplesTest {

    static final Path ROOT = Path.of(System.getProperty("strawblue.root"));

    static List<Path> examples() throws IOException {
        try (var files = Files.list(ROOT.resolve("examples"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void canBeRead(Path example) {
        Read<Job> read = JobReader.read(example);
        assertThat(read.problems())
                .as(() -> new ProblemPrinter(100, false).print(read.problems()))
                .isEmpty();
        assertThat(read.value()).isPresent();
    }
}
