package org.strawblue.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WrapTest {

    @Test
    void breaksBetweenWordsAndCutsOnlyWhatIsLongerThanALine() {
        assertThat(Wrap.lines("soak then quench", 10)).containsExactly("soak then", "quench");
        assertThat(Wrap.lines("antidisestablishment", 8)).containsExactly("antidise", "stablish", "ment");
        assertThat(Wrap.lines("", 10)).containsExactly("");
    }

    @Test
    void aNumberStaysWithItsUnit() {
        String text = Text.of(org.strawblue.core.quantity.Phrase.of(
                        "hold at {} now", org.strawblue.core.quantity.Quantity.temperature(473.15)))
                .metric();
        assertThat(Wrap.lines(text, 12)).containsExactly("hold at", "200 °C", "(392 °F) now");
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noLineIsTooLongAndNothingIsLost(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 60; i++) {
            text.append("x".repeat(random.nextInt(1, 14))).append(random.nextInt(3) == 0 ? " " : "é ");
        }
        int width = random.nextInt(5, 60);
        List<String> lines = Wrap.lines(text.toString(), width);
        assertThat(lines).allMatch(l -> Wrap.length(l) <= width);
        assertThat(String.join("", lines).replace(" ", ""))
                .isEqualTo(text.toString().replace(" ", ""));
    }

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }
}
