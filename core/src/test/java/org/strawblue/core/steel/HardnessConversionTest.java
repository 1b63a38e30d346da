package org.strawblue.core.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HardnessConversionTest {

    /** ASTM E140 Table 1. */
    @ParameterizedTest
    @CsvSource({"60, 697", "50, 513", "40, 392", "20, 238", "65, 832", "68, 940"})
    void rowsOfTheStandard(double hrc, double hv) {
        assertEquals(hv, HardnessConversion.vickers(hrc).value().orElseThrow().value(), 1e-9);
        assertEquals(hrc, HardnessConversion.rockwell(hv).value().orElseThrow().value(), 1e-9);
    }

    @Test
    void outsideTheStandardIsRefused() {
        assertTrue(HardnessConversion.vickers(19.9).stopped());
        assertTrue(HardnessConversion.rockwell(941).stopped());
    }
}
