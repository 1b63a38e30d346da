package org.strawblue.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands under {@code spring} as a person gives them. */
class SpringCommandsTest {

    private static final String LATCH =
            "--wire|0.8mm|--outside|7.4mm|--free-length|31mm|--coils|10.5|--ends|closed and ground|--material|music wire";
    private static final String PLACE = "--bore|9.6mm|--rod|4mm|--rest|26mm|--travel|8mm";
    private static final String DRAWER = Path.of(System.getProperty("strawblue.root", ".."))
            .resolve("examples/springs/drawer.csv")
            .toString();

    private static final Path ROOT = Path.of(System.getProperty("strawblue.root", ".."));
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    private static Shell shell(String... parts) {
        return Shell.run(String.join("|", parts).split("\\|"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"find", "check", "identify", "cut", "wind"})
    void eachHelpsWithExamplesAndExitCodes(String command) {
        Shell shell = shell("spring", command, "--help");
        assertThat(shell.code()).isZero();
        assertThat(shell.out()).contains("Usage: strawblue spring " + command, "Examples:", "Exit codes:", "--json");
    }

    /** As it stands there. */
    @ParameterizedTest
    @ValueSource(strings = {"find", "check", "identify", "cut", "wind"})
    void everyExampleOfTheHelpIsAnswered(String command) {
        String help = shell("spring", command, "--help").out();
        assertThat(help.lines()).allMatch(l -> l.length() <= 80);
        help.replaceAll("\\\\\\R\\s*", "")
                .lines()
                .filter(l -> l.startsWith("  strawblue "))
                .forEach(example -> {
                    Shell shell = Shell.run(WORD.matcher(example.strip().substring("strawblue ".length()))
                            .results()
                            .map(m -> m.group(1) == null ? m.group(2) : m.group(1))
                            .map(w ->
                                    w.startsWith("examples/") ? ROOT.resolve(w).toString() : w)
                            .toArray(String[]::new));
                    assertThat(shell.code()).as(example + "\n" + shell.err()).isZero();
                });
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "identify", "cut", "wind"})
    void nothingToldIsBadInput(String command) {
        Shell shell = shell("spring", command);
        assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(shell.err()).contains("--wire", "--outside", "--coils");
        assertThat(shell.out()).isEmpty();
    }

    /** The worked case of the science book: 4.4, 1.9, 4.2, 1.9 and 6.6 %. */
    @Test
    void identifyGivesTheWorkedErrorBudget() {
        Shell shell = shell(
                "spring|identify|--wire|1.00 ±0.01 mm|--outside|9.00 ±0.05 mm|--active-coils|6 ±0.25",
                "--ends|closed and ground|--modulus|80 ±1.5 GPa");
        assertThat(shell.code()).isZero();
        assertThat(shell.out())
                .containsPattern("from the wire +4.4 %")
                .containsPattern("from the outside +1.9 %")
                .containsPattern("from the coil count +4.2 %")
                .containsPattern("from the modulus +1.9 %")
                .containsPattern("all of it +6.6 %");
    }

    /** Thin wire in metres has a power of ten; it must not get lost on the way. */
    @Test
    void thinWireWithItsErrorIsRead() {
        Shell shell = shell("spring|identify|--wire|0.30 ±0.01 mm|--outside|3.0 ±0.05 mm|--coils|9|--ends|closed");
        assertThat(shell.code()).isZero();
        assertThat(shell.out()).containsPattern("from the wire +14 %");
    }

    @Test
    void identifyWeighsLooksAndScale() {
        Shell shell = shell(
                "spring|identify|--wire|0.9mm|--outside|8mm|--free-length|34mm|--coils|11|--ends|closed and ground",
                "--magnet|slight|--looks|bright|--rust|no|--push|600 gf at 29 mm; 1.3 kgf at 24 mm");
        assertThat(shell.code()).isZero();
        assertThat(shell.out()).contains("Rate by push test", "It is stainless wire", "Wire bears at least");
    }

    @Test
    void identifyTellsAWordItDoesNotKnow() {
        Shell shell = shell("spring|identify|--wire|1mm|--outside|9mm|--coils|8|--magnet|sideways");
        assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(shell.err()).contains("sideways", "strong, slight, none");
    }

    @Test
    void checkShowsEveryLimit() {
        Shell shell = shell("spring|check", LATCH, PLACE, "--cycles|100000|--hottest|80C|--screw|M6");
        assertThat(shell.code()).isZero();
        assertThat(shell.out())
                .contains("Gaps needed", "Outside, ends held", "Bows out from", "Wire bears", "Safety against tiring")
                .contains("Slackens", "A turn of the M6 screw");
    }

    /** A wider class of EN 15800 makes a wider rate. */
    @Test
    void aSpringMadeToAClassCarriesItsLimits() {
        assertThat(shell("spring", LATCH, "--made-to|1").out())
                .isNotEqualTo(shell("spring", LATCH, "--made-to|3").out());
        assertThat(shell("spring", LATCH, "--made-to|4").code()).isEqualTo(ExitCode.BAD_INPUT);
    }

    @Test
    void feelingsAreForces() {
        Shell shell = shell("spring|check", LATCH, PLACE, "--force-at-rest|firm by thumb");
        assertThat(shell.code()).isZero();
        assertThat(shell.out()).containsPattern("Wanted at rest +6–16 N");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "extension|--wire|0.9mm|--outside|6.3mm|--coils|12|--tension|5N|--force|15N",
                "torsion|--wire|1.5mm|--outside|16mm|--coils|4.25|--legs|40mm|--pin|11.5mm|--moment|497 N·mm",
                "disc|--outside|20mm|--inside|10.2mm|--thickness|1.1mm|--cone|0.45mm|--deflection|0.3mm",
                "flat|--length|20mm|--width|5mm|--thickness|0.4mm|--deflection|1mm",
            })
    void otherKindsAnswer(String kind) {
        Shell shell = shell("spring|check|--kind", kind, "--json");
        assertThat(shell.code()).isZero();
        assertThat(shell.out()).startsWith("{").contains("title");
    }

    /** JI8-9 of the textbook: wound-up mean 13.46 mm on an 11.5 mm pin; a pin of 12.5 mm seizes. */
    @Test
    void aPinThatSeizesIsRefused() {
        Shell shell = shell(
                "spring|check|--kind|torsion|--wire|1.5mm|--outside|16mm|--coils|4.25|--pin|12.5mm|--moment|497 N·mm");
        assertThat(shell.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(shell.out()).contains("13.46", "seizes on its pin");
    }

    @Test
    void unknownKindsAreBadInput() {
        assertThat(shell("spring|check|--kind|helix").code()).isEqualTo(ExitCode.BAD_INPUT);
    }

    @Test
    void cutListsWhatIsLeft() {
        String tall = "--wire|0.6mm|--outside|6.2mm|--free-length|120mm|--coils|42|--ends|closed|--material|music wire";
        Shell all = shell("spring|cut", tall, "--new-end|closed");
        assertThat(all.code()).isZero();
        assertThat(all.out()).contains("closed", "left", "is a knife");
        Shell fitting = shell("spring|cut", tall, PLACE, "--force-at-rest|5-10N");
        assertThat(fitting.code()).isZero();
        assertThat(fitting.out()).contains("at full travel, works");
        Shell none = shell("spring|cut", LATCH, PLACE, "--force-at-rest|50-60N");
        assertThat(none.code()).isEqualTo(ExitCode.REFUSED);
    }

    @Test
    void windGivesTheSheetAndItsCautions() {
        Shell shell = shell("spring|wind", LATCH);
        assertThat(shell.code()).isZero();
        assertThat(shell.out()).contains("Arbor", "Turns to wind", "Nearest lathe pitch", "Bake", "whips");
        Shell tried = shell("spring|wind", LATCH, "--trial-arbor|5mm|--trial-outside|7.6mm");
        assertThat(tried.out()).contains("Arbor, by your trial");
        Shell odd = shell("spring|wind", LATCH, "--trial-arbor|8mm|--trial-outside|7.6mm");
        assertThat(odd.code()).isEqualTo(ExitCode.BAD_INPUT);
    }

    @Test
    void findAnswersInJsonAndInInch() {
        Shell json = shell("spring|find|--drawer", DRAWER, PLACE, "--force-at-rest|5-10N|--json");
        assertThat(json.code()).isZero();
        assertThat(json.out()).startsWith("{").contains("works");
        Shell inch = shell("spring|find|--drawer", DRAWER, PLACE, "--force-at-rest|5-10N|--units|inch");
        assertThat(inch.out()).contains(" in");
    }

    @Test
    void whatNoSpringCanDoIsToldBeforeAnySearch() {
        Shell shell = shell(
                "spring|find|--drawer",
                DRAWER,
                "--bore|6.5mm|--rod|4mm|--rest|26mm|--travel|12mm|--force-at-rest|12-14N",
                "--force-at-full-travel|20-25N");
        assertThat(shell.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(shell.out()).contains("No spring of round wire does this");
    }

    /** Columns in any order, units in head and cell, words for what was seen; each row not understood is told, none dropped. */
    @Test
    void everyRowNotUnderstoodIsTold(@TempDir Path dir) throws IOException {
        Path file = dir.resolve("drawer.csv");
        Files.writeString(
                file,
                "coils,magnet,OD [in],wire mm,what,length,push\n"
                        + "10,strong,0.29,0.8,good,31 mm,880 gf at 26 mm; 1.58 kgf at 22 mm\n"
                        + "10,sideways,0.29,0.8,bad magnet,31 mm,\n"
                        + "10,slight,0.29,0.8,bad push,31 mm,heavy\n");
        Shell shell = shell("spring|find|--drawer", file.toString(), PLACE);
        assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(shell.err()).contains("sideways", "heavy", "a force at each length");
    }
}
