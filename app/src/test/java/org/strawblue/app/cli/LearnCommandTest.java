package org.strawblue.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LearnCommandTest {

    private static final String OVEN = "../examples/logs/oven-200.csv";
    private static final String PIN = "../examples/logs/tempered-pin.yaml";

    private static final List<String> JOBS = List.of(
            "../examples/logs/oven-1-punch.yaml",
            "../examples/logs/oven-2-scriber.yaml",
            "../examples/logs/oven-3-bushing.yaml");
    private static final Pattern PEAK =
            Pattern.compile("(?s)\"peak\".*?\"low\" : (-?[0-9.]+).*?\"high\" : (-?[0-9.]+)");

    @TempDir
    private Path folder;

    private Shell learn(String... args) {
        List<String> all = new ArrayList<>(List.of("learn"));
        all.addAll(List.of(args));
        return Shell.run(all.toArray(String[]::new));
    }

    private String state() {
        return folder.resolve("shop.yaml").toString();
    }

    /** The example was made 12.5 K low, to swing 13 K in 14 min 20 s. */
    @Test
    void anOvenLogAloneTellsOffsetSwingPeriodAndWhatTheyCost() {
        Shell shell = learn(OVEN, "--grade", "O1");
        assertThat(shell.code()).as(shell.err()).isZero();
        assertThat(shell.out())
                .contains(
                        "−12 °C",
                        "Swing to either side",
                        "14 min",
                        "hardness, as it is",
                        "the offset changes it by",
                        "Next time");
    }

    @Test
    void whatIsKeptIsUsedAndTheSameLogDoesNotCountTwice() throws IOException {
        assertThat(learn(OVEN, "--state", state()).code()).isZero();
        String once = Files.readString(Path.of(state()));
        assertThat(learn(OVEN, "--state", state()).code()).isZero();
        assertThat(Files.readString(Path.of(state()))).isEqualTo(once).contains("jobs: 1");
        assertThat(learn(PIN, "--state", state()).code()).isZero();
        assertThat(Files.readString(Path.of(state()))).contains("the gun", "the oven");
    }

    /** What a log taught may help to judge another one, but not the log itself: that would count it twice. */
    @Test
    void judgeUsesWhatOtherLogsTaught() throws IOException {
        Path other = folder.resolve("other.yaml");
        Files.writeString(other, Files.readString(Path.of(PIN)).replace("Detent pin", "Another pin"));
        assertThat(learn(PIN, "--state", state()).code()).isZero();
        String usual = Shell.run("judge", PIN).out();
        Shell same = Shell.run("judge", PIN, "--state", state());
        Shell next = Shell.run("judge", other.toString(), "--state", state());
        assertThat(same.out()).isEqualTo(usual);
        assertThat(next.code()).isZero();
        assertThat(next.out().replaceAll("\\s+", " ")).contains("Measured in this shop");
        assertThat(Shell.run("judge", PIN, "--state", "pom.xml").code()).isEqualTo(ExitCode.BAD_INPUT);
    }

    /**
     * Three jobs in one oven, 14 °C too cool by how they were made, narrow what a fourth is thought to have had, of which hardly
     * anything was seen: the demonstration of the guide. One job alone narrows less than three, and is not taken at its word.
     */
    @Test
    void threeJobsNarrowTheFourth() {
        double[] none = gauge();
        assertThat(learn(JOBS.get(0), "--state", state()).code()).isZero();
        double[] one = gauge("--state", state());
        assertThat(learn(JOBS.get(1), JOBS.get(2), "--state", state()).code()).isZero();
        double[] three = gauge("--state", state());
        assertThat(none[1] - none[0]).isBetween(37.0, 41.0);
        assertThat(one[1] - one[0]).isLessThan(0.7 * (none[1] - none[0]));
        assertThat(three[1] - three[0]).isLessThan(0.8 * (one[1] - one[0])).isLessThan(0.4 * (none[1] - none[0]));
        assertThat(246.0).isBetween(three[0], three[1]);
        assertThat((one[0] + one[1]) / 2).isGreaterThan((three[0] + three[1]) / 2 - 4);
    }

    /** Limits of the fourth job's peak [°C]. */
    private double[] gauge(String... more) {
        List<String> line = new ArrayList<>(List.of("judge", "../examples/logs/oven-4-gauge.yaml", "--json"));
        line.addAll(List.of(more));
        Shell shell = Shell.run(line.toArray(String[]::new));
        assertThat(shell.code()).as(shell.err()).isZero();
        Matcher peak = PEAK.matcher(shell.out());
        assertThat(peak.find()).isTrue();
        return new double[] {Double.parseDouble(peak.group(1)), Double.parseDouble(peak.group(2))};
    }

    /** Crayons of a kit 40 °C off beside a thermocouple: the contradiction is told, and such a heat teaches nothing. */
    @Test
    void aWrongKitIsToldAndTeachesNothing() throws IOException {
        Path log = folder.resolve("wrong-kit.yaml");
        Files.writeString(log, Files.readString(Path.of(JOBS.get(0))).replaceAll("(?s)observations:.*", """
                observations:
                  - {crayon: 204 C, result: slick, at: 115 min}
                  - {crayon: 212 C, result: barely, at: 115 min}
                  - {crayon: 226 C, result: dry, at: 115 min}
                  - {thermocouple: 258 C, of: part, at: 115 min}
                """));
        Shell shell = learn(log.toString(), "--state", state());
        assertThat(shell.code()).as(shell.err()).isZero();
        assertThat(shell.out().replaceAll("\\s+", " ")).contains("contradicts itself", "nothing is learned from it");
        assertThat(Files.readString(Path.of(state()))).contains("learned: []");
    }

    @Test
    void aSecondOvenIsAnother() throws IOException {
        learn(OVEN, "--state", state());
        learn(OVEN, "--oven", "toaster {}", "--state", state());
        assertThat(Files.readString(Path.of(state()))).contains("\"the oven\"", "\"toaster {}\"");
    }

    @Test
    void aLogTooShortIsRefusedAndNothingIsWritten() throws IOException {
        Path log = Files.writeString(folder.resolve("short {}.csv"), "time_s,temperature_C\n0,20\n60,100\n120,190\n");
        Shell shell = learn(log.toString(), "--set", "200C", "--state", state());
        assertThat(shell.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(shell.out()).contains("STOP", "10 min");
        assertThat(Path.of(state())).doesNotExist();
    }

    @Test
    void aSettingThatIsNotKnownIsNoFault() throws IOException {
        Path log = folder.resolve("o.csv");
        StringBuilder text = new StringBuilder("time_min,temperature_F\n");
        for (int i = 0; i < 120; i++) {
            text.append(i).append(',').append(390 + 20 * Math.sin(i / 2.5)).append('\n');
        }
        Files.writeString(log, text);
        Shell shell = learn(log.toString(), "--set", "don't know");
        assertThat(shell.code()).isZero();
        assertThat(shell.out()).contains("its offset cannot be told", "Swing to either side");
        assertThat(learn(log.toString(), "--set", "390 F", "--by", "oven thermometer", "--units", "inch", "--json")
                        .out())
                .contains("\"offset\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "learn",
                "learn no-such-file.csv",
                "learn no-such-file.yaml",
                "learn src",
                "learn " + OVEN + " --set warm",
                "learn " + OVEN + " --by nose",
                "learn " + OVEN + " --grade Unobtainium",
                "learn " + OVEN + " --grade O1 --time 0s",
                "learn " + OVEN + " --state pom.xml",
                "learn " + OVEN + " --nonsense",
                "learn ../examples/drawer.csv",
            })
    void aFaultIsBadInput(String line) {
        Shell shell = Shell.run(line.split(" "));
        assertThat(shell.code()).as(shell.out() + shell.err()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(shell.err()).isNotBlank().doesNotContain("Exception");
        assertThat(shell.out()).isEmpty();
    }

    @Test
    void allFaultsAreToldAtOnce() {
        Shell shell = learn("no-such.csv", OVEN, "--set", "warm", "--by", "nose", "--time", "soon");
        assertThat(shell.err()).contains("no-such.csv", "--set", "--by", "--time", "4 problems");
    }
}
