package org.strawblue.app.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.job.UnitSystem;

class OvenLogReaderTest {

    private static Read<LoggedOven> read(String text) {
        return OvenLogReader.read("oven.csv", text, UnitSystem.METRIC);
    }

    /** Three readings, 200 °C (392 °F) at 60 s and 180 s, told in many ways; 9 °F are 5 K (NIST SP 811). */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "time_s,temperature_C\n0,195\n60,200\n180,200\n",
                "Time (min),Temp (°F)\n0,383\n1,392\n3,392\n",
                "minutes;°C\n0;195\n1;200\n3;200\n",
                "time,temperature\n0 s,195 C\n1 min,392 F\n3 min,200 °C\n",
                "timestamp,probe,setpoint\n2026-01-31 14:30:00,195,200\n2026-01-31 14:31:00,200,200\n2026-01-31 14:33:00,200,200\n",
                "clock\ttemp\n23:59\t195\n00:00\t200\n00:02\t200\n",
                "date,oven\n1/31/2026 11:59:00 PM,195\n2/1/2026 12:00:00 AM,200\n2/1/2026 12:02:00 AM,200\n",
                "0,195\n60,200\n180,200\n",
                "# a remark\nT [C],time [s]\n195,0\n200,60\n200,180\n",
                "time_s,temperature_C\n0,195\n30,\n45,don't know\n50,NaN\n60,200\n60,201\n180,200\n",
                "\uFEFFtime_s,temperature_C\r\n0,195\r\n60,200\r\n180,200\r\n",
            })
    void anyWayOfWritingSaysTheSame(String text) {
        Read<LoggedOven> read = read(text);
        assertThat(read.problems()).isEmpty();
        LoggedOven log = read.value().orElseThrow();
        assertThat(log.trace().seconds()).containsExactly(new double[] {0, 60, 180}, within(1e-6));
        assertThat(log.trace().kelvin()).containsExactly(new double[] {468.15, 473.15, 473.15}, within(1e-6));
    }

    @Test
    void theSettingOfTheLogCountsAndTheExampleReads() {
        LoggedOven log = OvenLogReader.read(Path.of("../examples/logs/oven-200.csv"), UnitSystem.METRIC)
                .value()
                .orElseThrow();
        assertThat(log.set().orElseThrow()).isCloseTo(473.15, within(1e-9));
        assertThat(log.name()).startsWith("oven-200.csv ");
        assertThat(OvenLogReader.isOne(Path.of("../examples/logs/oven-200.csv")))
                .isTrue();
        assertThat(OvenLogReader.isOne(Path.of("../examples/logs/tempered-pin.yaml")))
                .isFalse();
        assertThat(OvenLogReader.isOne(Path.of("../examples/drawer.csv"))).isFalse();
    }

    @Test
    void inchUnitsReadBareTemperaturesAsFahrenheit() {
        LoggedOven log = OvenLogReader.read("o.csv", "s,temp\n0,392\n60,392\n", UnitSystem.INCH)
                .value()
                .orElseThrow();
        assertThat(log.trace().kelvin(0)).isCloseTo(473.15, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\n\n",
                "a,b\n1,2\n",
                "time_s\n0\n60\n",
                "temperature_C\n200\n201\n",
                "time_s,temperature_C\n",
                "time_s,temperature_C\n0,200\n",
                "time_s,temperature_C\n0,200\n60,warm\n",
                "time_s,temperature_C\n0,200\n60,99999\n",
                "time_s,temperature_C\n60,200\n0,200\n",
                "time_s,temperature_C\n0,200\nsoon,200\n",
                "time_s,temperature_C\n0,3 mm\n60,200\n",
                "time_s,temperature_C\n0,\"200\n60,200\n",
                "timestamp,temp\n2026-13-41 10:00,200\n2026-13-41 10:01,200\n",
            })
    void aFaultIsToldWithWhatToDo(String text) {
        Read<LoggedOven> read = read(text);
        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).isNotEmpty().allMatch(p -> !p.remedy().isBlank());
    }

    @Test
    void everyFaultIsToldAtOnceButNotEndlessly() {
        assertThat(read("time_s,temperature_C\n0,x\n60,y\n120,z\n").problems()).hasSize(3);
        StringBuilder many = new StringBuilder("time_s,temperature_C\n");
        IntStream.range(0, 500).forEach(i -> many.append(i).append(",hot\n"));
        assertThat(read(many.toString()).problems()).hasSizeBetween(10, 30);
    }

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyTextEndsInALogOrInProblems(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        String[] pieces = {
            "time",
            "temperature",
            "_C",
            "(F)",
            ",",
            ";",
            "\t",
            "\n",
            "0",
            "200",
            "392 F",
            "14:30",
            "2026-01-31 ",
            "\"",
            "-",
            "set",
            "1e9",
            "°",
            "don't know",
            "#",
            " ",
            "PM",
            "NaN",
            "-1",
            ".",
            "99:99:99"
        };
        StringBuilder text = new StringBuilder(seed % 2 == 0 ? "time_s,temperature_C\n" : "");
        for (int i = random.nextInt(120); i > 0; i--) {
            text.append(pieces[random.nextInt(pieces.length)]);
        }
        Read<LoggedOven> read = read(text.toString());
        assertThat(read.value().isPresent()).isEqualTo(read.problems().isEmpty());
    }
}
