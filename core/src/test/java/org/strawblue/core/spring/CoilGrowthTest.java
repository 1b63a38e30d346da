package org.strawblue.core.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoilGrowthTest {

    private static final Moduli STEEL = new Moduli(206e9, 81.5e9);

    /** Finite elements to solid, mean of all turns [mm], 2 mm wire, pitch 6 mm: ends held and ends free. */
    @ParameterizedTest
    @CsvSource({"12, 0.1335, 0.2103", "20, 0.0779, 0.1258"})
    void meetsFiniteElements(double mean, double held, double free) {
        assertThat(growth(new EndsHeld(), mean)).isCloseTo(held, Percentage.withPercentage(4));
        assertThat(growth(new EndsFree(), mean)).isCloseTo(free, Percentage.withPercentage(4));
    }

    /** EN 13906-1, formula sheet, evaluated: 0.2133 and 0.1280 mm. */
    @ParameterizedTest
    @CsvSource({"12, 0.2133", "20, 0.1280"})
    void theRodWithFreeEndsIsTheEuropeanStandard(double mean, double standard) {
        assertThat(growth(new En13906Growth(), mean)).isCloseTo(standard, within(0.0001));
        assertThat(growth(new EndsFree(), mean)).isCloseTo(standard, Percentage.withPercentage(2));
    }

    /** Finite elements, clamped square: single coils reach 0.34 and 0.46 mm (12 mm), 0.27 and 0.33 mm (20 mm). */
    @Test
    void wanderCoversMostOfWhatSingleCoilsDo() {
        for (double[] c : new double[][] {{12, 0.3407, 0.4571}, {20, 0.2745, 0.3330}}) {
            Coil coil = Coil.of(0.002, (c[0] + 2) / 1000, 0.042, 9, Ends.both(EndType.CLOSED_GROUND));
            double widest = CompressionSpring.widestOutside(coil, STEEL, coil.solid()) - coil.outside();
            double share = (coil.pitch() - coil.wire()) / 0.004;
            assertThat(widest * 1000 / share).isBetween(c[1], 1.05 * c[2]);
        }
    }

    private static double growth(CoilGrowth law, double mean) {
        return law.growth(STEEL, mean / 1000, 0.002, 0.006, 0.002) * 1000;
    }
}
