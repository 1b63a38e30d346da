package org.strawblue.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeatCommandTest {

    private static Shell run(String line) {
        return Shell.run(line.split(" "));
    }

    /** A dozen minutes on a plate at 290 °C bring a 12 mm bar to 265 to 285 °C: our twins, verification/heat. */
    @Test
    void tellsABarOnAPlate() {
        Shell shell = run("heat --diameter 12mm --length 200mm --on hotplate --at 290C --for 12min --grade W1 --cover");
        assertThat(shell.code()).isZero();
        assertThat(shell.out())
                .contains("underside")
                .contains("top")
                .contains("Hardness at the end")
                .contains("balance");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "heat",
                "heat --diameter 12mm",
                "heat --diameter 12mm --on hotplate --for 5min",
                "heat --diameter 12mm --on nothing --at 290C --for 5min",
                "heat --diameter 12mm --on hotplate --at 290mm --for 5min",
                "heat --diameter 12mm --on hotplate --at 290C --for 0min",
                "heat --diameter 12mm --on hotplate --at 290C --for 5min --gap 0mm",
                "heat --diameter 12mm --on hotplate --at 290C --for 5min --surface wet",
                "heat --diameter warm --on hotplate --at 290C --for 5min",
                "heat --side 5mm --diameter 4mm --on hotplate --at 290C --for 5min",
                "heat --diameter 12mm --on hotplate --at 290C --for 5min --grade Unobtainium",
                "heat --diameter 12mm --on hotplate --at 290C --for 5min --start cold"
            })
    void aFaultIsBadInput(String line) {
        Shell shell = run(line);
        assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(shell.err()).isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "heat --diameter 300mm --on hotplate --at 290C --for 5min",
                "heat --diameter 12mm --on kiln --at 1900C --for 5min",
                "heat --diameter 12mm --on hotplate --at 290C --for 100h"
            })
    void outsideItsRangeItIsRefusedWithTheLimits(String line) {
        Shell shell = run(line);
        assertThat(shell.code()).as(shell.out() + shell.err()).isEqualTo(ExitCode.REFUSED);
    }

    static IntStream seeds() {
        return IntStream.range(0, 25);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyHeatIsAnsweredOrRefused(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        String[] on = {"hotplate", "oven", "kiln", "torch", "water", "oil", "air", "sandtray", "forge"};
        String line = "heat --diameter " + (0.3 + 60 * random.nextDouble()) + "mm --on " + on[random.nextInt(on.length)]
                + " --at " + random.nextInt(1200) + "C --for " + (0.01 + 90 * random.nextDouble()) + "min --start "
                + random.nextInt(900) + "C" + (random.nextBoolean() ? " --cover" : "");
        assertThat(run(line).code()).isIn(ExitCode.FINE, ExitCode.REFUSED);
    }
}
