package org.strawblue.core.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.strawblue.core.source.Bibliography;

class StressFactorTest {

    private static final List<StressFactor> CORRECTED = List.of(new Wahl(), new Bergstraesser(), new Goehner());

    /** Textbook solutions to chapter 10 (11.4, 10) and example 8.1 of another (8). */
    @Test
    void givesThePrintedFactors() {
        assertThat(new Bergstraesser().at(11.4)).isCloseTo(1.117, within(0.0006));
        assertThat(new Bergstraesser().at(10)).isCloseTo(1.135, within(0.0006));
        assertThat(new Wahl().at(8)).isCloseTo(1.184, within(0.0006));
    }

    /** Finite elements, open solver, quadratic bricks: greatest shear at the inside of the coil. */
    @ParameterizedTest
    @CsvSource({"4, 1.38451", "6, 1.24171", "10, 1.13986"})
    void staysNearFiniteElements(double index, double computed) {
        assertThat(new Bergstraesser().at(index)).isCloseTo(computed, Percentage.withPercentage(0.6));
        assertThat(new Goehner().at(index)).isCloseTo(computed, Percentage.withPercentage(0.6));
        assertThat(new Wahl().at(index)).isBetween(computed, computed * 1.015);
    }

    /** EN 13906-1 writes (w + 0.5)/(w − 0.75): the same thing. */
    @ParameterizedTest
    @CsvSource({"3", "5.5", "12", "20"})
    void bergstraesserIsTheEuropeanStandards(double index) {
        assertThat(new Bergstraesser().at(index)).isCloseTo((index + 0.5) / (index - 0.75), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"3", "6", "12", "20"})
    void everyLawFallsWithTheIndexAndCountsMoreThanDirectShear(double index) {
        for (StressFactor law : CORRECTED) {
            assertThat(law.at(index)).isGreaterThan(law.at(index * 1.1)).isGreaterThan(new DirectShear().at(index));
        }
        assertThat(new Wahl().at(1e9)).isCloseTo(1, within(1e-8));
    }

    @Test
    void everyLawNamesASource() {
        for (StressFactor law : List.of(new Wahl(), new Bergstraesser(), new Goehner(), new DirectShear())) {
            assertThat(Bibliography.find(law.basis().source())).isPresent();
        }
    }

    /** Textbook example, nested springs: 706.021 N, 6 mm wire, 36 mm mean: 375.305 MPa. */
    @Test
    void multipliesStraightTorsion() {
        assertThat(new Wahl().stress(706.021, 0.036, 0.006)).isCloseTo(375.305e6, Percentage.withPercentage(0.01));
    }
}
