package org.strawblue.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DiagnoseCommandTest {

    private static Shell diagnose(String... args) {
        return Shell.run(
                Stream.concat(Stream.of("diagnose"), Arrays.stream(args)).toArray(String[]::new));
    }

    /** Too cold a heat leaves O1 soft (common practice; its window by data sheets). */
    @Test
    void tellsCausesTheStepAndTheCaution() {
        Shell shell = diagnose(
                "--symptom",
                "did not harden",
                "--grade",
                "O1",
                "--diameter",
                "12mm",
                "--quench",
                "oil",
                "--hardened-from",
                "700C");
        assertThat(shell.code()).isZero();
        assertThat(shell.out())
                .containsSubsequence(
                        "Do this",
                        "▲ Caution",
                        "Fully hard steel is as brittle",
                        "1. very likely",
                        "It was not hot enough");
    }

    @Test
    void withLittleKnownItNamesWhatTellsMost() {
        Shell shell = diagnose("--symptom", "cracked");
        assertThat(shell.code()).isZero();
        assertThat(shell.out()).contains("First", "What tells them apart", "--seen ");
    }

    @Test
    void aJobFileTellsWhatIsKnown() {
        Shell shell = diagnose(
                "../examples/index-plunger.yaml",
                "--part",
                "plunger pin",
                "--symptom",
                "did not harden",
                "--seen",
                "magnet=held");
        assertThat(shell.code()).as(shell.err()).isZero();
        assertThat(shell.out()).contains("not hot enough");
    }

    /** A coupon soft from oil and hard from water, with bushy sparks, is a water-hardening carbon steel (common practice). */
    @Test
    void unknownSteelIsWeighedAndAGuessIsRefused() {
        Shell clear =
                diagnose("--unknown-steel", "--look", "ground", "--oil", "soft", "--water", "hard", "--spark", "bushy");
        assertThat(clear.code()).isZero();
        assertThat(clear.out()).contains("1. ", "high-carbon steel that hardens in water");
        Shell guess = diagnose("--unknown-steel", "--oil", "hard");
        assertThat(guess.out()).contains("No treatment is advised", "it would be a");
        Shell advised =
                diagnose("--unknown-steel", "--oil", "hard", "--thick", "hard", "--spark", "bushy", "--look", "ground");
        assertThat(advised.out()).contains("Treat it so", "Harden from", "O1").doesNotContain("No treatment");
    }

    /** Goggles and a guard for the wheel, a shield and goggles for the snap: at the step where the hazard is. */
    @Test
    void theHazardousStepCarriesItsCaution() {
        Shell snap =
                diagnose("--unknown-steel", "--look", "black", "--oil", "soft", "--water", "hard", "--spark", "bushy");
        assertThat(snap.out()).contains("Snapping hard steel throws splinters", "goggles", "rules of your shop");
        Shell spark = diagnose("--unknown-steel", "--look", "black", "--magnet", "holds", "--file", "bites");
        assertThat(spark.out()).contains("Next", "Grinding wheel: guard", "goggles");
    }

    @Test
    void notKnowingIsAnAnswer() {
        Shell shell = diagnose(
                "--symptom",
                "bent",
                "--grade",
                "don't know",
                "--seen",
                "entry=don't know",
                "--hardened-from",
                "don't know");
        assertThat(shell.code()).as(shell.err()).isZero();
        assertThat(diagnose("--unknown-steel", "--oil", "don't know").code()).isZero();
    }

    @Test
    void allFaultsAreToldAtOnce() {
        Shell shell = diagnose(
                "--symptom",
                "crackd",
                "--hardened-from",
                "3mm",
                "--heated-for",
                "0s",
                "--quench",
                "milk",
                "--oil",
                "hard");
        assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(shell.err())
                .contains("Did you mean cracked", "--hardened-from", "--heated-for", "--quench", "--oil", "5 problems");
    }

    static List<List<String>> faults() {
        return List.of(
                List.of(),
                List.of("--symptom", "don't know"),
                List.of("--symptom", "sings"),
                List.of("--symptom", "cracked", "--seen", "corners"),
                List.of("--symptom", "cracked", "--seen", "corners=purple"),
                List.of("--symptom", "cracked", "--seen", "mood=bad"),
                List.of("--symptom", "cracked", "--seen", "corners=sharp", "--seen", "corners=round"),
                List.of("--symptom", "cracked", "--unknown-steel"),
                List.of("--symptom", "cracked", "--part", "pin"),
                List.of("no-such-job.yaml", "--symptom", "cracked"),
                List.of("../examples/index-plunger.yaml", "--symptom", "cracked"),
                List.of("../examples/index-plunger.yaml", "--part", "wheel", "--symptom", "cracked"),
                List.of("--symptom", "cracked", "--grade", "Unobtainium"),
                List.of("--symptom", "cracked", "--diameter", "-3mm"),
                List.of("--symptom", "cracked", "--wanted", "hard"),
                List.of("--unknown-steel", "--oil", "maybe"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void aFaultIsBadInput(List<String> args) {
        Shell shell = diagnose(args.toArray(String[]::new));
        assertThat(shell.code()).as(shell.out()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(shell.err()).isNotBlank().doesNotContain("Exception");
        assertThat(shell.out()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"did not harden", "cracked", "chips", "rolls over", "bent", "colour does not match"})
    void everySymptomIsAnsweredInJsonToo(String symptom) {
        Shell shell = diagnose("--symptom", symptom, "--grade", "1095", "--side", "6mm", "--json", "--units", "inch");
        assertThat(shell.code()).as(shell.err()).isZero();
        assertThat(shell.out()).contains("\"cause_1\"", "\"refused\" : false");
    }

    static IntStream seeds() {
        return IntStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyJobIsAnswered(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        String[] symptoms = {"did not harden", "cracked", "chips", "rolls over", "bent", "colour"};
        String[] grades = {"O1", "W1", "D2", "1018", "1045", "M2", "440C", "5160"};
        String[] quenches = {"water", "brine", "fast oil", "air", "plates"};
        Shell shell = diagnose(
                "--symptom",
                symptoms[random.nextInt(symptoms.length)],
                "--grade",
                grades[random.nextInt(grades.length)],
                "--quench",
                quenches[random.nextInt(quenches.length)],
                "--diameter",
                (0.3 + 100 * random.nextDouble()) + "mm",
                "--heat",
                random.nextBoolean() ? "torch" : "kiln",
                "--hardened-from",
                (500 + random.nextInt(800)) + "C",
                "--heated-for",
                (0.1 + 300 * random.nextDouble()) + "min",
                "--tempered-at",
                (20 + random.nextInt(700)) + "C",
                "--tempered-for",
                (0.01 + 600 * random.nextDouble()) + "min",
                "--wanted",
                "50-52");
        assertThat(shell.code()).as(shell.err()).isZero();
    }
}
