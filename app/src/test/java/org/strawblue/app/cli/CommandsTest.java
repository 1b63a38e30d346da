package org.strawblue.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command as a person gives it: help, answers, faults, exit codes. */
class CommandsTest {

    private static Shell shell(String line) {
        return Shell.run(line.isEmpty() ? new String[0] : line.split(" "));
    }

    @Test
    void withoutACommandItSaysWhatThereIs() {
        Shell shell = shell("");
        assertThat(shell.code()).isZero();
        assertThat(shell.out()).contains("temper", "colour", "spring", "grades", "table", "proof", "Exit codes");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plan",
                "harden",
                "temper",
                "colour",
                "color",
                "spring",
                "fit",
                "assemble",
                "grades",
                "table",
                "learn",
                "diagnose",
                "proof",
                "completion"
            })
    void everyCommandHelpsWithAnExample(String command) {
        Shell shell = shell(command + " --help");
        assertThat(shell.code()).isZero();
        assertThat(shell.out()).contains("Usage: strawblue " + command.replace("color", "colour"));
        assertThat(shell.out()).containsPattern("Examples?:");
        assertThat(shell.out().lines().filter(l -> l.contains("  strawblue ") || l.contains("<(strawblue")))
                .isNotEmpty();
    }

    @Test
    void aMistypedCommandIsAnsweredWithTheNearest() {
        Shell shell = shell("tempr --grade O1");
        assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(shell.err()).contains("Did you mean", "temper");
        assertThat(shell.out()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "temper",
                "temper --grade O1 --time 1h",
                "temper --grade O1 --temperature 400F",
                "temper --grade nosteel --temperature 400F --time 1h",
                "temper --grade O1 --temperature 400 --time 1",
                "temper --grade O1 --temperature 4oo --time 1h",
                "temper --grade O1 --temperature 400F --time 1h --times 0",
                "temper --grade O1 --temperature 400F --time 1h --times x",
                "temper --grade O1 --temperature 400F --time 1h --hardness 58-60",
                "temper --grade O1 --hardness hard --time 1h",
                "temper --composition C=x --temperature 400F --time 1h",
                "temper --composition Q=1 --temperature 400F --time 1h",
                "temper --composition C=0.5,Mn=120 --temperature 400F --time 1h",
                "temper --grade O1 --temperature 400F --time 1h --units imperial",
                "temper --grade O1 --temperature 400F --time 1h --nonsense",
                "temper --grade O1 --temperature don't-know --time 1h",
                "harden",
                "harden --grade O1",
                "harden --grade O1 --diameter 8mm --side 8mm --length 40mm",
                "harden --grade O1 --diameter -8mm --length 40mm",
                "harden --grade O1 --outside 8mm --bore 9mm --length 40mm",
                "harden --grade O1 --thickness 2mm --length 40mm",
                "harden --grade O1 --diameter 8mm --length 40mm --quench custard",
                "harden --grade O1 --diameter 8mm --length 40mm --heat candle",
                "colour",
                "colour --temperature 480F --time 5min --light moon",
                "colour --shows green --time 5min",
                "spring",
                "spring --wire 1mm",
                "spring --wire 1mm --outside 1.5mm --free-length 20mm --coils 8",
                "spring --wire 1mm --outside 8mm --free-length 20mm --coils 8 --rest 10mm --travel 12mm",
                "spring --drawer no-such-file.csv --rest 10mm --travel 2mm",
                "grades unobtainium",
                "table",
                "table temper",
                "table sing x.csv"
            })
    void badInputIsToldWithoutATraceAndNothingIsPrinted(String line) {
        Shell shell = shell(line);
        assertThat(shell.code()).as(shell.err()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(shell.err()).isNotBlank().doesNotContain("Exception").doesNotContain("\tat ");
        assertThat(shell.out()).isEmpty();
    }

    @Test
    void allFaultsAreToldAtOnce() {
        Shell shell = shell("temper --grade O9 --temperature 99999F --time soon --times 0");
        assertThat(shell.err()).contains("--grade", "--temperature", "--time", "--times", "4 problems");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "harden --grade O1 --diameter 8mm --length 46mm --quench oil --heat kiln --json",
                "harden --grade O1 --side 8mm --length 46mm --json",
                "harden --grade O1 --diameter 8mm --json",
                "colour --temperature 480F --json",
                "grades --json",
                "grades O1 --json",
                "colour --temperature 480F --time 5min --json",
                "colour --shows straw --time 1h --json --units inch",
                "spring --wire 0.8mm --outside 7mm --free-length 30mm --coils 10 --json",
                "spring --wire 0.8mm --outside 7mm --free-length 30mm --coils 10 --bore 8mm --rest 25mm --travel 4mm --json",
                "fit --size 8mm --fit H7/g6 --grade O1 --hardened both --json",
                "fit --size 14mm --fit dowel --json --units inch",
                "assemble --thread M4 --lock high --blue straw --black hot --json",
                "temper --grade O1 --temperature 400F --time 1h --json",
                "temper --grade O1 --hardness 58-60 --time 1h --json",
                "temper --grade O1 --temperature 200C --time 1h --in 20min --json",
                "temper --grade O1 --temperature 200C --time 1h --at 220C --json",
            })
    void jsonIsWellFormedAndEveryNumberIsWhole(String line) throws IOException {
        Shell shell = shell(line);
        assertThat(shell.code()).as(shell.err()).isZero();
        try (JsonParser json = new JsonFactory().createParser(shell.out())) {
            assertThat(json.nextToken()).isEqualTo(JsonToken.START_OBJECT);
            objectOf(json);
            assertThat(json.nextToken()).isNull();
        }
    }

    /** Wherever there is a value and a low, there are a high, a unit and sources too. */
    private static void objectOf(JsonParser json) throws IOException {
        Set<String> names = new HashSet<>();
        for (JsonToken t = json.nextToken(); t != JsonToken.END_OBJECT; t = json.nextToken()) {
            if (t == JsonToken.FIELD_NAME) {
                assertThat(names.add(json.currentName()))
                        .as("twice: " + json.currentName())
                        .isTrue();
            } else if (t == JsonToken.START_OBJECT) {
                objectOf(json);
            } else if (t == JsonToken.START_ARRAY) {
                arrayOf(json);
            }
        }
        if (names.contains("low") && names.contains("value")) {
            assertThat(names).contains("high", "unit", "sources");
        }
    }

    private static void arrayOf(JsonParser json) throws IOException {
        for (JsonToken t = json.nextToken(); t != JsonToken.END_ARRAY; t = json.nextToken()) {
            if (t == JsonToken.START_OBJECT) {
                objectOf(json);
            } else if (t == JsonToken.START_ARRAY) {
                arrayOf(json);
            }
        }
    }

    @Test
    void theUnitsOfTheAnswerAreThoseAskedFor() {
        String question = "colour --temperature 250C --time 5min";
        assertThat(shell(question).out()).contains("250 °C (482 °F)");
        assertThat(shell(question + " --units inch").out()).contains("482 °F");
        assertThat(shell("colour --temperature 480 --time 5min --units inch").out())
                .contains("480 °F");
    }

    @Test
    void tradeWordsAndFormsAreTaken() {
        assertThat(Shell.run("grades", "silver steel").code()).isBetween(0, 2);
        assertThat(Shell.run("colour", "--temperature", "480 F", "--time", "1/2 h")
                        .code())
                .isZero();
        assertThat(Shell.run(
                                "spring",
                                "--wire",
                                "1/32\"",
                                "--outside",
                                "9/32 in",
                                "--free-length",
                                "1-1/8 in",
                                "--coils",
                                "10")
                        .code())
                .isZero();
    }

    @Test
    void anExtraLargeTemperatureIsRefusedNotComputed() {
        Shell shell = shell("colour --temperature 700C --time 1h");
        assertThat(shell.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(shell.out()).contains("STOP");
    }

    @Test
    void mildSteelIsRefusedWithWhatToDoInstead() {
        Shell shell = shell("harden --grade 1018 --diameter 10mm --length 30mm --quench water");
        assertThat(shell.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(shell.out()).contains("STOP", "→");
    }

    @Test
    void completionIsAShellScript() {
        Shell shell = shell("completion");
        assertThat(shell.code()).isZero();
        assertThat(shell.out()).contains("complete ", "temper", "--temperature");
    }
}
