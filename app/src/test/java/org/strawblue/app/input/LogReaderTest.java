package org.strawblue.app.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.app.service.JudgeService;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.job.HeatLog;

class LogReaderTest {

    private static final String HEAD = "title: t\nobservations:\n  - ";

    @Test
    void readsTheExample() {
        Read<HeatLog> read = LogReader.read(Path.of("../examples/logs/tempered-pin.yaml"));
        assertThat(read.problems()).isEmpty();
        HeatLog log = read.value().orElseThrow();
        assertThat(log.observations()).hasSize(5);
        assertThat(log.heat()).hasSize(1);
        assertThat(log.heat().get(0).seconds()).isEqualTo(14 * 60);
    }

    @Test
    void aTableAndAListSayTheSame() {
        String table = "crayon,result,at\n232 C,slick,10 min\n550 F,dry,12 min\n";
        String list =
                HEAD + "{crayon: 232 C, result: slick, at: 10 min}\n  - {crayon: 550 F, result: dry, at: 12 min}\n";
        assertThat(LogReader.read("l.csv", table).value().orElseThrow().observations())
                .isEqualTo(LogReader.read("l.yaml", list).value().orElseThrow().observations());
    }

    @Test
    void aPickedSwatchIsAFilm() {
        Observation look = LogReader.read("l.yaml", HEAD + "colour: '#8a5a2b'\n")
                .value()
                .orElseThrow()
                .observations()
                .get(0);
        Observation.Colour colour = (Observation.Colour) look;
        assertThat(colour.film().low()).isBetween(5e-9, 100e-9);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "crayon: 232 C",
                "{crayon: 232 C, result: sluck}",
                "{crayon: warm, result: dry}",
                "{crayon: 5000 C, result: dry}",
                "{crayon: 232 C, infrared: 100 C, result: dry}",
                "{result: dry}",
                "{colour: heliotrope}",
                "{colour: '#12'}",
                "{infrared: 111 C, surface: wet}",
                "{infrared: 111 C, setting: 3}",
                "{file: 55 mm, result: bites}",
                "{file: common}",
                "{file: common, result: maybe}",
                "{magnet: perhaps}",
                "{coupon: green}",
                "{indent: {ball: 6 mm}}",
                "{tester: 400 HRC}",
                "{thermocouple: 250 C, type: Q}",
                "{dial: 20 mm}",
                "{crayon: 232 C, result: dry, at: yesterday}",
                "{crayon: 232 C, result: dry, place: nowhere}",
                "{colour: blue, light: moon}",
                "crayn: 232 C",
                "just words"
            })
    void aFaultIsToldWithItsPlaceAndWhatToDo(String look) {
        Read<HeatLog> read = LogReader.read("l.yaml", HEAD + look + "\n");
        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).isNotEmpty();
        assertThat(read.problems())
                .allMatch(p -> p.place().line() >= 1 && !p.remedy().isBlank());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "heat:\n  - {on: hot plate, temperature: 290 C, time: 12 min}\n",
                "part: {shape: round bar, diameter: 12 mm}\nheat:\n  - {on: hot plate, time: 12 min}\n",
                "part: {shape: round bar, diameter: 12 mm}\nheat:\n  - {on: bath of milk, temperature: 9 C, time: 1 min}\n",
                "part: {shape: round bar, diameter: 12 mm}\nheat:\n  - {on: hot plate, temperature: 290 C}\n",
                "costs: {too soft: many}\n",
                "light: moon\n",
                "observations: 5\n",
                "[1, 2]\n",
                "a: b: c\n"
            })
    void aFaultOfTheHeatIsTold(String text) {
        Read<HeatLog> read = LogReader.read("l.yaml", text);
        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).isNotEmpty();
    }

    @Test
    void whatIsNotKnownIsNoFault() {
        String text = "part: {steel: don't know, shape: round bar, diameter: 12 mm, length: don't know}\n"
                + HEAD.substring(9) + "{crayon: 232 C, result: slick, at: don't know}\n";
        assertThat(LogReader.read("l.yaml", text).problems()).isEmpty();
    }

    /** A heat that is known only in part is not followed: the looks tell alone, and the person is told so. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "on: hot plate, temperature: don't know, time: 12 min",
                "on: hot plate, temperature: 290 C, time: ?",
                "on: don't know, temperature: 290 C, time: 12 min"
            })
    void aHeatThatIsNotKnownLeavesTheLooksAlone(String heat) {
        String text = "part: {steel: W1, shape: round bar, diameter: 12 mm, length: 60 mm}\n" + "heat:\n  - {" + heat
                + "}\n" + HEAD.substring(9) + "{crayon: 232 C, result: slick, at: 12 min}\n";
        Read<HeatLog> read = LogReader.read("l.yaml", text);
        assertThat(read.problems()).isEmpty();
        assertThat(read.value().orElseThrow().heat()).isEmpty();
        assertThat(read.notes()).anyMatch(note -> note.contains("looks alone"));
    }

    static IntStream seeds() {
        return IntStream.range(0, 150);
    }

    /** Pieces of a good log put together anyhow. */
    @ParameterizedTest
    @MethodSource("seeds")
    void anyTextEndsInALogOrInProblems(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        String[] pieces = {
            "observations:",
            "\n",
            "  - ",
            "crayon: 232 C",
            ", ",
            "{",
            "}",
            "result: dry",
            "heat:",
            "on: oven",
            "part:",
            "\t",
            "'",
            "\"",
            "#",
            "time: 5 min",
            "[",
            "]",
            ": ",
            "?",
            "°",
            "-1",
            "1e9",
            "colour: blue",
            "at: 3"
        };
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < random.nextInt(60); i++) {
            text.append(pieces[random.nextInt(pieces.length)]);
        }
        Read<HeatLog> read = LogReader.read(seed % 2 == 0 ? "l.yaml" : "l.csv", text.toString());
        assertThat(read.value().isPresent() || !read.problems().isEmpty()).isTrue();
    }

    /** Contradictory evidence is told, and no verdict is given on it. */
    @Test
    void contradictionIsTold() {
        String text = "part: {steel: O1, shape: round bar, diameter: 8 mm, length: 40 mm, hardness: 58-60 HRC}\n"
                + "heat:\n  - {on: fan oven, temperature: 200 C, time: 2 h}\n"
                + "observations:\n  - {thermocouple: 198 C}\n  - {crayon: 300 C, result: slick}\n  - {crayon: 330 C, result: slick}\n";
        Sheet sheet = JudgeService.judge(LogReader.read("l.yaml", text).value().orElseThrow());
        assertThat(sheet.findings()).anyMatch(f -> f.what().template().contains("does not fit"));
    }
}
