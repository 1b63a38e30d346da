package org.strawblue.app.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.job.UnitSystem;

/**
 * Tables with faults. The first lines say what must be answered: words of the finding of a row, counted from 1, or of the
 * problem of the whole file; they are taken away before the table is read.
 */
class MalformedTableTest {

    private static final Path FOLDER =
            Path.of(System.getProperty("strawblue.root"), "app", "src", "test", "resources", "malformed", "table");

    private static final Pattern EXPECT = Pattern.compile("#expect (file|\\d+) \\| (.+)");

    static List<Path> tables() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everyFaultIsAnsweredInItsRow(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        String question = lines.get(0).substring("#question ".length());
        Matcher expected = EXPECT.matcher(lines.get(1));
        assertThat(expected.matches()).isTrue();
        StringWriter out = new StringWriter();
        TableRun.Outcome outcome = TableRun.run(
                question,
                UnitSystem.METRIC,
                file.toString(),
                new StringReader(lines.stream().skip(2).collect(Collectors.joining("\n"))),
                out);
        if (expected.group(1).equals("file")) {
            assertThat(outcome.problems()).anyMatch(p -> p.remedy().contains(expected.group(2)));
        } else {
            assertThat(outcome.problems()).isEmpty();
            int row = Integer.parseInt(expected.group(1));
            List<String> answers = out.toString().lines().toList();
            assertThat(answers.get(row)).contains(expected.group(2));
            assertThat(answers.subList(1, answers.size()).stream().filter(a -> a.contains(expected.group(2))))
                    .as("a bad row does not spoil the others")
                    .hasSize(1);
        }
    }
}
