package org.strawblue.core.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.estimate.Finding;

class ScrewThreadTest {

    /** Thread tables (unified, model engineers', BA) as printed on the pages named in threads.csv; 25.4/tpi for the pitch. */
    @ParameterizedTest
    @CsvSource({
        "M6, 6, 1", "m 8, 8, 1.25", "8-32, 4.1656, 0.79375", "#10-24, 4.826, 1.05833", "1/4-20, 6.35, 1.27",
        "1/4-28 UNF, 6.35, 0.90714", "1/4x40, 6.35, 0.635", "3/8-32 ME, 9.525, 0.79375", "4BA, 3.6, 0.66", "0 BA, 6, 1",
        "M4x0.5, 4, 0.5", "M4 × 0.35, 4, 0.35", "5/16-36, 7.9375, 0.70556"
    })
    void isKnownByItsTradeName(String name, double major, double pitch) {
        ScrewThread thread = ScrewThread.find(name).value().orElseThrow();
        assertThat(thread.major() * 1000).isCloseTo(major, within(1e-3));
        assertThat(thread.pitch() * 1000).isCloseTo(pitch, within(1e-3));
    }

    /** BA: pitch 0.9^n mm, diameter 6 p^1.2 (rule of the British Association), to the rounding of the table. */
    @Test
    void baFollowsItsRule() {
        for (int n = 0; n <= 12; n++) {
            ScrewThread thread = ScrewThread.find(n + "BA").value().orElseThrow();
            double pitch = Math.pow(0.9, n);
            assertThat(thread.pitch() * 1000).isCloseTo(pitch, within(0.006));
            assertThat(thread.major() * 1000).isCloseTo(6 * Math.pow(pitch, 1.2), within(0.06));
        }
    }

    @Test
    void whatWasWrittenOutRestsOnNoTable() {
        assertThat(ScrewThread.find("M5x0.5").value().orElseThrow().bases()).isNotEmpty();
        assertThat(ScrewThread.find("M5x0.6").value().orElseThrow().bases()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "M44", "wood screw", "M4x4", "1/0-20", "8-33", "{}"})
    void whatIsNoThreadIsRefused(String text) {
        var answer = ScrewThread.find(text);
        assertThat(answer.value()).isEmpty();
        assertThat(answer.findings()).hasSize(1).allMatch(Finding.Stop.class::isInstance);
    }
}
