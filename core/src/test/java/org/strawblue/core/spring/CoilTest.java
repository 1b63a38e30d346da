package org.strawblue.core.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoilTest {

    /**
     * Handbook table of compression spring ends, with N coils in all, wire d, free length L: active coils; solid length;
     * pitch. Here N = 10, d = 1, L = 31.
     */
    @ParameterizedTest
    @CsvSource({
        "OPEN, 10, 11, 3.0", // N; (N + 1) d; (L − d)/N
        "OPEN_GROUND, 9, 10, 3.1", // N − 1; N d; L/N
        "CLOSED, 8, 11, 3.5", // N − 2; (N + 1) d; (L − 3d)/(N − 2)
        "CLOSED_GROUND, 8, 10, 3.625", // N − 2; N d; (L − 2d)/(N − 2)
    })
    void endsCountAsInTheHandbook(EndType ends, double active, double solid, double pitch) {
        Coil coil = Coil.of(1, 9, 31, 10, Ends.both(ends));
        assertThat(coil.active()).isEqualTo(active);
        assertThat(coil.solid()).isEqualTo(solid);
        assertThat(coil.pitch()).isCloseTo(pitch, within(1e-12));
    }

    @Test
    void mixedEndsAreHalfOfEach() {
        Coil coil = Coil.of(1, 9, 31, 10, new Ends(EndType.CLOSED, EndType.OPEN));
        assertThat(coil.active()).isEqualTo(9);
        assertThat(coil.solid()).isEqualTo(11);
        assertThat(coil.pitch()).isCloseTo((31 - 2.0) / 9, within(1e-12));
    }

    @Test
    void isAsWideAsItIs() {
        Coil coil = Coil.of(1, 9, 31, 10, Ends.both(EndType.CLOSED));
        assertThat(coil.mean()).isEqualTo(8);
        assertThat(coil.inside()).isEqualTo(7);
        assertThat(coil.index()).isEqualTo(8);
    }

    /** EN 13906-1 sheet: n (0.0015 D²/d + 0.1 d), half as much again when worked often. */
    @Test
    void leavesTheGapsOfTheStandard() {
        Coil coil = Coil.of(1, 9, 31, 10, Ends.both(EndType.CLOSED_GROUND));
        assertThat(coil.leastGap(false)).isCloseTo(8 * (0.0015 * 64 + 0.1), within(1e-12));
        assertThat(coil.leastGap(true)).isCloseTo(1.5 * coil.leastGap(false), within(1e-12));
    }

    @Test
    void closedAndGroundEndsKnowThemselves() {
        assertThat(EndType.CLOSED_GROUND.closed() && EndType.CLOSED_GROUND.ground())
                .isTrue();
        assertThat(EndType.OPEN.closed() || EndType.OPEN.ground()).isFalse();
    }
}
