package org.strawblue.core.spring;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RateLawTest {

    private static final Moduli STEEL = new Moduli(206e9, 81.5e9);

    /** Finite elements, open solver, quadratic bricks, 2 mm wire, rates in N/mm. */
    @ParameterizedTest
    @CsvSource({
        "4, 1.5, 1, 320.7823, 0.2",
        "6, 1.5, 1, 94.64615, 0.2",
        "10, 1.5, 1, 20.39946, 0.2",
        "4, 3, 2, 158.14790, 0.2",
        "6, 3, 2, 47.04485, 0.2",
        "10, 3, 2, 10.17861, 0.2",
        "6, 3, 3, 31.36302, 0.2",
    })
    void thePitchCorrectedRateMeetsFiniteElements(
            double index, double pitchInWires, double turns, double computed, double percent) {
        double rate = new PitchCorrectedRate().rate(STEEL, 0.002, 0.002 * index, turns, 0.002 * pitchInWires);
        assertThat(rate / 1000).isCloseTo(computed, Percentage.withPercentage(percent));
        double classical = new ClassicalRate().rate(STEEL, 0.002, 0.002 * index, turns, 0.002 * pitchInWires);
        assertThat(classical / 1000).isCloseTo(computed, Percentage.withPercentage(0.8));
    }

    /** EN 13906-1 sheet: (3620 − T)/3600 of the modulus at 20 °C. */
    @Test
    void hotWireIsSofter() {
        Moduli hot = STEEL.at(273.15 + 200);
        assertThat(hot.shear()).isCloseTo(81.5e9 * 3420 / 3600, Percentage.withPercentage(1e-9));
        assertThat(STEEL.at(293.15).tension()).isCloseTo(206e9, Percentage.withPercentage(1e-9));
        assertThat(hot.ratio()).isCloseTo(STEEL.ratio(), Percentage.withPercentage(1e-9));
    }

    /** Finite elements: 620.8 Hz for 2 mm wire, 12 mm mean, 8 turns. */
    @Test
    void surgeIsWithinTwoPercentOfFiniteElements() {
        double rate = new ClassicalRate().rate(STEEL, 0.002, 0.012, 8, 0);
        double frequency = Surge.frequency(rate, Surge.activeMass(7850, 0.002, 0.012, 8));
        assertThat(frequency).isCloseTo(620.8, Percentage.withPercentage(2));
    }

    /** Bench tests at two and a half to three coils: 3 to 15 % stiffer (index 5), 8 to 19 % (index 7). */
    @Test
    void fewCoilsAreStifferAsOnTheBench() {
        assertThat(FewCoils.factor(2.75) - FewCoils.halfWidth(2.75)).isBetween(1.0, 1.08);
        assertThat(FewCoils.factor(2.75) + FewCoils.halfWidth(2.75)).isBetween(1.15, 1.19);
        assertThat(FewCoils.factor(4)).isEqualTo(1);
        assertThat(FewCoils.matters(3.9)).isTrue();
        assertThat(FewCoils.factor(1)).isEqualTo(FewCoils.factor(2));
    }
}
