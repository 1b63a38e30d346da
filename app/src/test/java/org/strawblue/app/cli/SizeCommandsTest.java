package org.strawblue.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.app.report.Screen;
import picocli.CommandLine;

/** The commands fit and assemble, as a person types them. */
class SizeCommandsTest {

    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    /** A line as a shell would split it. */
    private static String[] split(String line) {
        List<String> words = new ArrayList<>();
        Matcher m = WORD.matcher(line);
        while (m.find()) {
            words.add(m.group(1) == null ? m.group(2) : m.group(1));
        }
        return words.toArray(String[]::new);
    }

    private static Shell run(String line) {
        return Shell.run(split(line));
    }

    static Stream<String> examples() {
        return Stream.of(new FitCommand(Screen.plain(80)), new AssembleCommand(Screen.plain(80)))
                .flatMap(c -> Arrays.stream(
                        new CommandLine(c).getCommandSpec().usageMessage().footer()))
                .map(String::strip)
                .filter(l -> l.startsWith("strawblue "))
                .map(l -> l.substring("strawblue ".length()));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleOfTheHelpAnswers(String line) {
        Shell shell = run(line);
        assertThat(shell.err()).isEmpty();
        assertThat(shell.code()).isZero();
        assertThat(shell.out().lines()).allMatch(l -> l.length() <= 80);
        Shell json = run(line + " --json");
        assertThat(json.out()).startsWith("{").contains("\"refused\" : false");
    }

    /** ISO 286 as printed: 8 H7/g6 is 8.000 to 8.015 in 7.986 to 7.995. */
    @Test
    void aFitIsToldByItsLimits() {
        assertThat(run("fit --size 8mm --fit H7/g6").out())
                .contains("8.000–8.015 mm", "7.986–7.995 mm", "0.005–0.029 mm", "sliding");
    }

    /** ASME B4.1 as printed: RC 2 at 0.24 to 0.40 in: hole +0.4 0, shaft −0.2 −0.45 thousandths. */
    @Test
    void inchClassesAreToldToTheirLastFigure() {
        String out = run("fit --size \"3/8 in\" --fit RC2 --units inch").out();
        assertThat(out).contains("0.3750–0.3754 in", "0.37455–0.37480 in", "0.20–0.85 thou");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fit --size \"8 mm H7/g6\"",
                "fit --size 8mm --fit \"H7 / g6\"",
                "fit --size 0.008m --fit sliding",
                "fit --size 8 --fit Plunger",
                "fit --size \"ø8 mm\" --fit close-sliding"
            })
    void theSameFitHoweverWritten(String line) {
        assertThat(run(line).out()).isEqualTo(run("fit --size 8mm --fit H7/g6").out());
    }

    @Test
    void theShaftForAMeasuredHoleIsTold() {
        String out = run("fit --size 8mm --fit sliding --hole 8.011mm").out();
        assertThat(out).contains("Make the shaft to measure", "micrometer");
        Shell coarse = run("fit --size 8mm --fit sliding --hole 8.011mm --hole-by calliper");
        assertThat(coarse.code()).isEqualTo(1);
        assertThat(coarse.out()).contains("STOP", "Measure both to within");
    }

    @Test
    void everyFaultOfALineIsToldAtOnce() {
        Shell fit =
                run("fit --size \"3 q\" --fit wobbly --hole 8mn --at 5kg --hole-metal wood --grade cheese --grew 12");
        assertThat(fit.code()).isEqualTo(2);
        assertThat(fit.out()).isEmpty();
        assertThat(fit.err())
                .contains("--size", "--fit", "wobbly", "--hole:", "--at", "--hole-metal", "--grade", "--grew");
        Shell assemble = run("assemble --thread M44 --lock strongest --blue mauve --in 3x --engaged 0 --black pink");
        assertThat(assemble.err()).contains("6 problems");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fit",
                "fit --fit H7/g6",
                "fit --size 8mm",
                "fit --size -3mm --fit H7/g6",
                "fit --size 8mm --fit H7/g6 --hardened shaft",
                "fit --size 8mm --fit H7/g6 --grade O1 --hardened half",
                "fit --chain \"12 mm - \"",
                "fit --chain \"12 ±0.1 mm - 8 mm q6\"",
                "fit --chain \"12 mm\" --at-least 2mm --at-most 1mm",
                "assemble",
                "assemble --blue straw --at 220C --in 5min",
                "assemble --thread M4 --temper 200C --for 0min"
            })
    void whatCannotBeReadIsRefusedWithoutATrace(String line) {
        Shell shell = run(line);
        assertThat(shell.code()).isEqualTo(2);
        assertThat(shell.out()).isEmpty();
        assertThat(shell.err()).contains("Nothing was written").doesNotContain("Exception");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fit --size 300mm --fit H7/g6",
                "fit --size 3in --fit RC4",
                "assemble --thread M4 --gap 1mm",
                "assemble --blue \"light blue\" --at 430C",
                "assemble --blue grey --in 5min"
            })
    void whatIsOutsideIsRefusedWithTheReason(String line) {
        Shell shell = run(line);
        assertThat(shell.code()).isEqualTo(1);
        assertThat(shell.out()).contains("STOP");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fit --size 8mm --fit \"don't know\" --hole 8.01mm --shaft 7.99mm --at \"don't know\"",
                "assemble --thread M4 --lock \"don't know\" --engaged \"don't know\" --clearance \"don't know\""
            })
    void notKnowingIsAnAnswer(String line) {
        Shell shell = run(line);
        assertThat(shell.err()).isEmpty();
        assertThat(shell.code()).isZero();
    }

    /** Hardening asked for, the sizes told first are those of the finished part, and nothing tells to ream a hard hole. */
    @Test
    void hardenedPartsAreNotReamedToSize() {
        String out = run("fit --size 8mm --fit H7/g6 --grade O1 --hardened both --grew \"O1: 12.000 to 12.014 mm\"")
                .out();
        assertThat(out).contains("Hole, finished", "Shaft, before hardening", "Lap when hard", "likely out of round");
        assertThat(out).doesNotContain("  Ream ");
    }

    @Test
    void measuredPartsAreTakenAsTheyAre() {
        assertThat(run("fit --size 8mm --fit H7/g6 --hole 8.01mm --grade O1").out())
                .contains("What hardening does is not counted here");
    }

    /** A line of the help that breaks cannot be copied. */
    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleStandsOnOneLine(String line) {
        assertThat("  strawblue " + line).hasSizeLessThanOrEqualTo(80);
    }

    /** What an earlier part did narrows what the next one is expected to do. */
    @Test
    void earlierPartsChangeTheAnswer() {
        String without = run("fit --size 8mm --fit H7/g6 --grade O1").out();
        String with =
                run("fit --size 8mm --fit H7/g6 --grade O1 --grew \"20.000 to 20.004 mm\" --grew \"O1: 10 to 10.002 mm\"")
                        .out();
        assertThat(with).isNotEqualTo(without).contains("variance of growth");
        assertThat(run("fit --size 8mm --fit H7/g6 --grade O1 --grew \"12.000 to 12.200 mm\"")
                        .out())
                .contains("is left out");
    }

    /** Chains: a plus or minus that stands alone divides sizes, one at a figure belongs to its limits. */
    @Test
    void chainsAreRead() {
        String out = run("fit --chain \"12 ±0.05 mm - 8 +0/-0.1 mm - 3.8 ±0.02 mm\" --at-least 0.25mm")
                .out();
        assertThat(out).contains("Chain of 3 sizes", "0.13–0.37 mm", "Chance that it is");
        assertThat(run("fit --chain \"3/8 in - 0.37 ±0.001 in\" --units inch").out())
                .contains("4–6 thou");
        assertThat(run("fit --chain \"8 mm H7 - 8 mm g6\"").out()).contains("0.005–0.029 mm");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fit --size 8mm --fit H7/p6 --grade O1 --hardened both --in-air 20min",
                "assemble --thread M4 --lock high --grade O1 --temper 200C --blue straw --black hot --clearance \"5-29 um\""
            })
    void theSameInEveryLocale(String line) {
        String expected = run(line).out();
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "de-DE", "ar-EG-u-nu-arab")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(run(line).out()).isEqualTo(expected);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    /** The hazards stand where the work is. */
    @Test
    void hazardsAreCautioned() {
        assertThat(run("assemble --thread M4 --lock high").out()).contains("fumes", "skin and eyes");
        assertThat(run("assemble --black hot").out()).contains("licensed plater");
        assertThat(run("assemble --blue blue --in 10min").out()).contains("Tongs");
        assertThat(run("fit --size 14mm --fit dowel").out()).contains("Hot metal looks cold");
    }
}
