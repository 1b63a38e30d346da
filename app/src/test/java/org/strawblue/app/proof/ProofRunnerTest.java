package org.strawblue.app.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Standing;

/** A check that cannot fail is no check: here each way to fail is tried. */
class ProofRunnerTest {

    private static final Map<String, Operation> OPERATIONS = Map.of(
            "hundred-celsius", in -> Result.of(Quantity.temperature(373.15)),
            "blue", in -> Result.word("blue"),
            "nan", in -> Result.number(Double.NaN),
            "broken",
                    in -> {
                        throw new IllegalStateException("broken");
                    });

    private static Verdict run(String operation, String expected, String unit, String tolerance, boolean control) {
        return new ProofRunner(OPERATIONS)
                .run(new Case(
                        "id",
                        "what",
                        operation,
                        Inputs.parse(""),
                        Expected.parse(expected, tolerance),
                        unit,
                        "strawblue",
                        Standing.PUBLISHED,
                        control));
    }

    @Test
    void aNumberPassesWithinItsToleranceAndFailsBeyond() {
        assertThat(run("hundred-celsius", "101", "°C", "1", false).passed()).isTrue();
        assertThat(run("hundred-celsius", "101", "°C", "0.9", false).passed()).isFalse();
        assertThat(run("hundred-celsius", "213", "°F", "1%", false).passed()).isTrue();
        assertThat(run("hundred-celsius", "215", "°F", "1%", false).passed()).isFalse();
    }

    @Test
    void aRangeIsInsideOrOut() {
        assertThat(run("hundred-celsius", "99..101", "°C", "", false).passed()).isTrue();
        assertThat(run("hundred-celsius", "101..102", "°C", "", false).passed()).isFalse();
    }

    @Test
    void aWordMustBeTheSame() {
        assertThat(run("blue", "blue", "", "", false).passed()).isTrue();
        assertThat(run("blue", "straw", "", "", false).passed()).isFalse();
        assertThat(run("hundred-celsius", "straw", "", "", false).passed()).isFalse();
        assertThat(run("blue", "5", "°C", "1", false).passed()).isFalse();
    }

    @Test
    void aControlPassesOnlyByMissing() {
        assertThat(run("hundred-celsius", "120", "°C", "1", true).passed()).isTrue();
        assertThat(run("hundred-celsius", "100", "°C", "1", true).passed()).isFalse();
    }

    @Test
    void whatDoesNotRunFailsEvenAsAControl() {
        for (boolean control : new boolean[] {false, true}) {
            assertThat(run("no-such", "1", "1", "1", control).passed()).isFalse();
            assertThat(run("broken", "1", "1", "1", control).passed()).isFalse();
            assertThat(run("nan", "1", "1", "1", control).passed()).isFalse();
            assertThat(run("hundred-celsius", "100", "mm", "1", control).passed())
                    .isFalse();
        }
    }

    @Test
    void aNumberNeedsAToleranceAndAWordMustNotHaveOne() {
        assertThatThrownBy(() -> Expected.parse("12", "")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Expected.parse("blue", "1")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void inputsAreReadInTradeForm() {
        Inputs in = Inputs.parse("grade=O1; temperature=400 F; time=1.5 h; turns=8; drift=-1e-3 mm");
        assertThat(in.text("grade")).isEqualTo("O1");
        assertThat(in.temperature("temperature")).isCloseTo(477.594, org.assertj.core.api.Assertions.within(0.001));
        assertThat(in.time("time")).isEqualTo(5400);
        assertThat(in.number("turns")).isEqualTo(8);
        assertThat(in.length("drift")).isEqualTo(-1e-6);
        assertThatThrownBy(() -> in.length("absent")).hasMessageContaining("absent");
        assertThatThrownBy(() -> in.length("temperature")).hasMessageContaining("no unit of length");
        assertThatThrownBy(() -> in.length("turns")).hasMessageContaining("unit is missing");
        assertThatThrownBy(() -> in.length("grade")).hasMessageContaining("expected a number");
        assertThatThrownBy(() -> Inputs.parse("O1")).hasMessageContaining("name=value");
    }
}
