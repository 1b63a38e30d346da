package org.strawblue.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalTest {

    /** Abramowitz and Stegun (1964), table 26.1. */
    @ParameterizedTest
    @CsvSource({"0, 0.5", "0.5, 0.691462", "1, 0.841345", "1.96, 0.975002", "-1, 0.158655", "-3, 0.001350"})
    void sharesAreThoseOfTheTables(double x, double share) {
        assertThat(Normal.below(x)).isCloseTo(share, within(1e-6));
        assertThat(Normal.quantile(share)).isCloseTo(x, within(1e-3));
    }

    @Test
    void theQuickReadingIsAsCloseAsItSays() {
        double most = IntStream.rangeClosed(-8000, 8000)
                .mapToDouble(i -> i / 1000.0)
                .map(x -> Math.abs(Normal.nearlyBelow(x) - Normal.below(x)))
                .max()
                .orElseThrow();
        assertThat(most).isLessThan(1e-5);
    }
}
