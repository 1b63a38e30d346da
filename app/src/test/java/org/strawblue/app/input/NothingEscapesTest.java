package org.strawblue.app.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.app.table.TableRun;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/** Whatever is thrown at the readers, they answer; each stream of random input is repeatable by its seed. */
class NothingEscapesTest {

    private static final Path ROOT = Path.of(System.getProperty("strawblue.root"));

    /** Pieces that readers of quantities and files are sensitive to, among plain letters. */
    private static final List<String> PIECES = List.of(
            "6",
            "1/2",
            "-",
            "+",
            "±",
            "/",
            ".",
            ",",
            "1e309",
            "½",
            "″",
            "\"",
            "'",
            "°",
            "F",
            "C",
            "mm",
            "in",
            "HRC",
            "to",
            "about",
            "don't know",
            "?",
            "h6",
            " ",
            "\t",
            "\n",
            "\r\n",
            ":",
            ": ",
            "- ",
            "#",
            "[",
            "]",
            "{",
            "}",
            "&a",
            "*a",
            "|",
            ">",
            "%",
            "@",
            "!",
            "!!",
            "~",
            "---",
            "...",
            "\u0000",
            "\uFEFF",
            "\uD83D",
            "é",
            "٣",
            "{}",
            "\\",
            "name",
            "steel",
            "O1",
            "parts",
            "0",
            "999999999999999999999",
            "1:30",
            "1 h",
            "<<",
            "? ",
            "\u2028",
            "e",
            "E5",
            "0x1F");

    static LongStream seeds() {
        return LongStream.range(0, 20);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void randomTextIsAnsweredByTheReaderOfQuantities(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            String text = text(random, 8);
            for (Dimension dimension : Dimension.values()) {
                if (dimension == Dimension.LENGTH || random.nextInt(6) == 0) {
                    ask(text, dimension);
                }
            }
        }
    }

    private static void ask(String text, Dimension dimension) {
        List<Dimension> written = List.of(
                Dimension.LENGTH,
                Dimension.TIME,
                Dimension.TEMPERATURE,
                Dimension.HARDNESS,
                Dimension.FORCE,
                Dimension.NUMBER,
                Dimension.FRACTION);
        if (!written.contains(dimension)) {
            return;
        }
        Expectation expected = Expectation.of(dimension, UnitSystem.METRIC);
        Reading<?> one = QuantityReader.quantity(text, expected);
        sound(one, text);
        sound(QuantityReader.band(text, expected), text);
        sound(QuantityReader.size(text, expected), text);
        QuantityReader.quantity(text, expected)
                .found()
                .ifPresent(q ->
                        assertThat(expected.range().contains(q.si())).as(text).isTrue());
    }

    private static void sound(Reading<?> reading, String text) {
        if (reading instanceof Reading.Fault<?> fault) {
            assertThat(fault.from()).as(text).isBetween(0, text.length());
            assertThat(fault.to()).as(text).isBetween(fault.from(), text.length());
            assertThat(fault.remedy()).isNotBlank();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void randomTextIsAnsweredByTheReadersOfFiles(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(1000 + seed);
        for (int i = 0; i < 30; i++) {
            answered(text(random, 60));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void spoiltCopiesOfGoodFilesAreAnswered(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(2000 + seed);
        List<String> good = List.of(
                Files.readString(ROOT.resolve("examples/index-plunger.yaml")),
                Files.readString(ROOT.resolve("examples/ratchet-pawl.yaml")),
                Files.readString(ROOT.resolve("examples/drawer.csv")),
                "temperature_c,time_h,light\n200,1,daylight\n300,2,lamp\n");
        for (int i = 0; i < 12; i++) {
            answered(spoil(good.get(i % good.size()), random));
        }
    }

    private static void answered(String text) throws IOException {
        Read<Job> job = JobReader.read("t.yaml", text);
        assertThat(job.value().isPresent()).as(text).isEqualTo(job.clean());
        Read<Drawer> drawer = DrawerReader.read("t.csv", text, UnitSystem.INCH);
        for (Problem problem : job.problems()) {
            shown(problem);
        }
        drawer.problems().forEach(NothingEscapesTest::shown);
        TableRun.run("colour", UnitSystem.METRIC, "t.csv", new StringReader(text), new StringWriter());
    }

    private static void shown(Problem problem) {
        assertThat(problem.remedy()).isNotBlank();
        assertThat(problem.expected()).isNotBlank();
        assertThat(new ProblemPrinter(40, true).print(problem)).contains("do:");
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void whatIsWrittenInAnyUnitIsReadBack(UnitSystem system) {
        SplittableRandom random = new SplittableRandom(7);
        for (Unit unit : Units.all()) {
            if (unit.symbol().equals("1") || !written(unit.dimension())) {
                continue;
            }
            Expectation expected = Expectation.of(unit.dimension(), system);
            for (int i = 0; i < 50; i++) {
                double si = expected.range().low()
                        + random.nextDouble() * Math.min(expected.range().width(), 10);
                for (String name : unit.names()) {
                    String text = java.math.BigDecimal.valueOf(unit.fromSi(si)).toPlainString() + " " + name;
                    assertThat(QuantityReader.quantity(text, expected).found())
                            .as(text)
                            .hasValueSatisfying(q ->
                                    assertThat(q.si()).isCloseTo(si, within(1e-9 * Math.max(1, Math.abs(si)))));
                }
            }
        }
    }

    private static boolean written(Dimension dimension) {
        return switch (dimension) {
            case LENGTH, MASS, TIME, TEMPERATURE, FORCE, STRESS, HARDNESS, FRACTION -> true;
            default -> false;
        };
    }

    private static String text(SplittableRandom random, int most) {
        StringBuilder out = new StringBuilder();
        int pieces = random.nextInt(most + 1);
        for (int i = 0; i < pieces; i++) {
            boolean letter = random.nextInt(8) == 0;
            out.append(
                    letter ? String.valueOf((char) random.nextInt(0x2200)) : PIECES.get(random.nextInt(PIECES.size())));
        }
        return out.toString();
    }

    /** A few cuts, doublings and foreign pieces. */
    private static String spoil(String text, SplittableRandom random) {
        StringBuilder out = new StringBuilder(text);
        int hurts = 1 + random.nextInt(5);
        for (int i = 0; i < hurts && out.length() > 2; i++) {
            int at = random.nextInt(out.length() - 1);
            switch (random.nextInt(3)) {
                case 0 -> out.delete(at, Math.min(out.length(), at + 1 + random.nextInt(12)));
                case 1 -> out.insert(at, PIECES.get(random.nextInt(PIECES.size())));
                default -> out.insert(at, out.substring(at, Math.min(out.length(), at + random.nextInt(80))));
            }
        }
        return out.toString();
    }
}
