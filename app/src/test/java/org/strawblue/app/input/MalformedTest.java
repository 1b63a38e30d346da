package org.strawblue.app.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.job.UnitSystem;

/**
 * Files with faults, each of which says in its first lines what must be answered: line, column, and words of the remedy.
 * {@code 0:0} leaves the place open (the end of the file, or the file as a whole).
 */
class MalformedTest {

    private static final Path FOLDER =
            Path.of(System.getProperty("strawblue.root"), "app", "src", "test", "resources", "malformed");

    private static final Pattern EXPECT = Pattern.compile("# expect (\\d+):(\\d+) \\| (.+)");

    static List<Path> jobs() throws IOException {
        return files("job");
    }

    static List<Path> drawers() throws IOException {
        return files("drawer");
    }

    private static List<Path> files(String kind) throws IOException {
        try (Stream<Path> files = Files.list(FOLDER.resolve(kind))) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void everyFaultOfAJobIsAnsweredWithPlaceAndRemedy(Path file) throws IOException {
        check(file, JobReader.read(file).problems());
        assertThat(JobReader.read(file).value()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("drawers")
    void everyFaultOfADrawerIsAnsweredWithPlaceAndRemedy(Path file) throws IOException {
        check(file, DrawerReader.read(file, UnitSystem.METRIC).problems());
    }

    @Test
    void thereAreEnoughOfThem() throws IOException {
        assertThat(jobs().size() + drawers().size() + files("table").size()).isGreaterThanOrEqualTo(60);
    }

    private static void check(Path file, List<Problem> problems) throws IOException {
        String printed = new ProblemPrinter(100, false).print(problems);
        List<Matcher> expected = Files.readAllLines(file).stream()
                .map(EXPECT::matcher)
                .filter(Matcher::matches)
                .toList();
        assertThat(problems).as(printed).hasSameSizeAs(expected).isNotEmpty();
        for (Matcher wanted : expected) {
            assertThat(problems)
                    .as(() -> "wanted " + wanted.group() + ", got\n" + printed)
                    .anyMatch(p -> matches(p, wanted));
        }
    }

    private static boolean matches(Problem p, Matcher wanted) {
        int line = Integer.parseInt(wanted.group(1));
        boolean here = line == 0 || p.place().line() == line && p.place().column() == Integer.parseInt(wanted.group(2));
        boolean whole = !p.read().isBlank() && !p.expected().isBlank();
        return here && whole && p.remedy().contains(wanted.group(3));
    }
}
