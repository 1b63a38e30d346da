package org.strawblue.core.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;

class ReadingsTest {

    private static final double[] MINUTES = {0, 60, 120, 180, 240};
    private static final double[] RISE = {293, 350, 400, 440, 470};

    private static String told(Answer<Trace> answer) {
        StringBuilder all = new StringBuilder();
        answer.findings().forEach(f -> all.append(f.what().write(a -> "#")).append('\n'));
        return all.toString();
    }

    @Test
    void aCleanLogIsTakenAsItIs() {
        Answer<Trace> answer = Readings.trace(MINUTES, RISE);
        assertThat(answer.findings()).isEmpty();
        assertThat(answer.value().orElseThrow().kelvin()).containsExactly(RISE);
    }

    @Test
    void orderIsRestoredAndTold() {
        Answer<Trace> answer =
                Readings.trace(new double[] {60, 0, 120, 240, 180}, new double[] {350, 293, 400, 470, 440});
        assertThat(answer.value().orElseThrow().kelvin()).containsExactly(RISE);
        assertThat(told(answer)).contains("not in order");
    }

    @Test
    void twoOfOneMomentAreAveraged() {
        Answer<Trace> answer = Readings.trace(new double[] {0, 60, 60, 120}, new double[] {293, 340, 360, 400});
        assertThat(answer.value().orElseThrow().at(60)).isCloseTo(350, within(1e-9));
        assertThat(told(answer)).contains("shares its time");
    }

    @Test
    void anOpenSensorIsLeftOutWithBothLimits() {
        Answer<Trace> answer = Readings.trace(MINUTES, new double[] {293, 350, 5000, 440, 470});
        assertThat(answer.value().orElseThrow().size()).isEqualTo(4);
        Finding wild = answer.findings().get(0);
        assertThat(wild).isInstanceOf(Finding.Caution.class);
        assertThat(wild.what().amounts()).hasSize(3);
    }

    @Test
    void nothingReadIsTold() {
        Answer<Trace> answer = Readings.trace(MINUTES, new double[] {293, Double.NaN, 400, 440, 470});
        assertThat(answer.value().orElseThrow().size()).isEqualTo(4);
        assertThat(told(answer)).contains("says nothing");
    }

    @Test
    void aGapIsToldAndHalfALogOfGapsIsRefused() {
        double[] seconds = new double[61];
        double[] kelvin = new double[61];
        Arrays.setAll(seconds, i -> i < 30 ? i * 10 : i * 10 + 200);
        Arrays.setAll(kelvin, i -> 300 + i);
        Answer<Trace> some = Readings.trace(seconds, kelvin);
        assertThat(some.value()).isPresent();
        assertThat(told(some)).contains("1 gap in the log");
        Arrays.setAll(seconds, i -> i < 30 ? i * 10 : i * 10 + 2000);
        Answer<Trace> most = Readings.trace(seconds, kelvin);
        assertThat(most.value()).isEmpty();
        assertThat(most.stopped()).isTrue();
    }

    @Test
    void oneReadingIsNoHistory() {
        assertThat(Readings.trace(new double[] {5}, new double[] {300}).stopped())
                .isTrue();
        assertThat(Readings.trace(new double[0], new double[0]).stopped()).isTrue();
    }

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    /** Whatever a logger writes is a history with rising times within what was read, or refused. */
    @ParameterizedTest
    @MethodSource("seeds")
    void anythingIsAHistoryOrRefused(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int n = random.nextInt(60);
        double[] seconds = new double[n];
        double[] kelvin = new double[n];
        for (int i = 0; i < n; i++) {
            seconds[i] = random.nextInt(12) == 0 ? Double.NaN : i * 30 + random.nextInt(-50, 50) + (i > 40 ? 500 : 0);
            kelvin[i] = random.nextInt(12) == 0 ? random.nextDouble(-1e4, 1e4) : 293 + i * 5;
        }
        Answer<Trace> answer = Readings.trace(seconds, kelvin);
        assertThat(answer.value().isPresent() || answer.stopped()).isTrue();
        answer.value().ifPresent(t -> {
            double most = Arrays.stream(kelvin).filter(k -> k < 1700).max().orElse(0);
            assertThat(t.peak()).isLessThanOrEqualTo(most);
            assertThat(t.second(0)).isZero();
        });
    }
}
