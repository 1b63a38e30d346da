package org.strawblue.app.report.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Solid lengths: the usual table of end types, closed (N + 1) d, closed and ground N d, as in EN 13906-1 and handbooks. */
class CoilTest {

    private static final double WIRE = 0.001;

    @ParameterizedTest
    @CsvSource({"8, true, false", "8, true, true", "9.5, true, true", "6, false, false"})
    void atSolidLengthEveryCoilTouchesTheNext(double coils, boolean closed, boolean ground) {
        double solid = (ground ? coils : coils + 1) * WIRE;
        Coil coil = new Coil(WIRE, coils, closed, ground, solid);
        for (double turn = 0; turn + 1 <= coils; turn += 0.25) {
            assertThat(coil.at(turn + 1) - coil.at(turn)).isCloseTo(WIRE, within(1e-12));
        }
    }

    @Test
    void closedEndsLieWireOnWireAtAnyLength() {
        Coil coil = new Coil(WIRE, 8, true, false, 0.02);
        assertThat(coil.at(0)).isCloseTo(WIRE / 2, within(1e-12));
        assertThat(coil.at(1) - coil.at(0)).isCloseTo(WIRE, within(1e-12));
        assertThat(coil.at(8) - coil.at(7)).isCloseTo(WIRE, within(1e-12));
        assertThat(coil.at(8)).isCloseTo(0.02 - WIRE / 2, within(1e-12));
        assertThat(coil.at(4) - coil.at(3)).isGreaterThan(2 * WIRE);
    }
}
