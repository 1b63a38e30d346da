package org.strawblue.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples from end to end, and what is left where. */
class PlanCommandTest {

    private static final Path EXAMPLES =
            Path.of(System.getProperty("strawblue.root", "..")).resolve("examples");

    @TempDir
    private Path folder;

    private static String example(String name) {
        return EXAMPLES.resolve(name + ".yaml").toString();
    }

    @ParameterizedTest
    @CsvSource({"index-plunger,0", "drill-jig-bush,0", "ratchet-pawl,0", "too-soft-to-harden,1"})
    void everyExampleLeavesItsCardInThreeForms(String name, int code) throws IOException {
        Shell shell = Shell.run("plan", example(name), "--out", folder.toString());
        assertThat(shell.code()).as(shell.err()).isEqualTo(code);
        assertThat(shell.out()).isNotBlank();
        assertThat(Files.readString(folder.resolve(name + "-card.html"))).contains("</html>");
        assertThat(Files.readAllBytes(folder.resolve(name + "-card.pdf"))).startsWith('%', 'P', 'D', 'F');
    }

    @ParameterizedTest
    @ValueSource(strings = {"--json", "--terminal-only"})
    void nothingIsLeftWhereNothingWasAskedFor(String option) throws IOException {
        Shell shell = Shell.run("plan", example("index-plunger"), option, "--out", folder.toString());
        assertThat(shell.code()).isZero();
        assertThat(folder).isEmptyDirectory();
    }

    /** With the option first the line is read by the command-line library, behind the file it is not. */
    @ParameterizedTest
    @ValueSource(strings = {"index-plunger", "too-soft-to-harden", "no-such-job"})
    void thePlainestLinesAreReadAsTheLibraryReadsThem(String name) {
        Shell plain = Shell.run("plan", example(name), Planning.TERMINAL_ONLY);
        Shell byLibrary = Shell.run("plan", Planning.TERMINAL_ONLY, example(name));
        assertThat(Planning.plain("plan", example(name), Planning.TERMINAL_ONLY))
                .isPresent();
        assertThat(Planning.plain("plan", Planning.TERMINAL_ONLY, example(name)))
                .isEmpty();
        assertThat(plain.out()).isEqualTo(byLibrary.out());
        assertThat(plain.err()).isEqualTo(byLibrary.err());
        assertThat(plain.code()).isEqualTo(byLibrary.code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "-h", "@options", ""})
    void whatMayBeAnOptionIsLeftToTheLibrary(String word) {
        assertThat(Planning.plain("plan", word)).isEmpty();
        assertThat(Planning.plain("plan")).isEmpty();
        assertThat(Planning.plain("heat", "job.yaml")).isEmpty();
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldOnBothWays() throws IOException {
        Path taken = Files.writeString(folder.resolve("taken"), "");
        Shell shell = Shell.run("plan", example("index-plunger"), "--out", taken.toString());
        assertThat(shell.code()).isEqualTo(ExitCode.NO_FILE);
        StringWriter err = new StringWriter();
        int code = Faults.guard("strawblue plan", new PrintWriter(err), () -> {
            throw new FileTrouble(taken, new NoSuchFileException("taken"));
        });
        assertThat(code).isEqualTo(ExitCode.NO_FILE);
        assertThat(err.toString()).startsWith("strawblue plan: ").contains("no such file");
    }

    @Test
    void badInputLeavesNothing() throws IOException {
        Path job =
                Files.writeString(folder.resolve("bad.yaml"), "title: x\nparts:\n  - stel: O1\n    diameter: 8 mmm\n");
        Path out = folder.resolve("cards");
        Shell shell = Shell.run("plan", job.toString(), "--out", out.toString());
        assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(shell.err()).contains("stel", "^", "Nothing was written").doesNotContain("Exception");
        assertThat(shell.out()).isEmpty();
        assertThat(out).doesNotExist();
    }

    @Test
    void aFileThatIsNotThereIsTold() {
        Shell shell = Shell.run("plan", folder.resolve("none.yaml").toString());
        assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(shell.err()).contains("no such file").doesNotContain("Exception");
    }

    @Test
    void whereNothingCanBeWrittenThatIsTold() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        Shell shell = Shell.run(
                "plan", example("index-plunger"), "--out", file.resolve("cards").toString());
        assertThat(shell.code()).isEqualTo(ExitCode.NO_FILE);
        assertThat(shell.err()).doesNotContain("Exception");
    }
}
