package org.strawblue.core.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PartShapeTest {

    /** Plane geometry: a long cylinder's volume over surface is a quarter of its diameter, a wide plate's half its thickness. */
    @Test
    void longBarsAndWidePlatesTendToTheTextbookRatios() {
        assertThat(new PartShape.RoundBar(0.012, 100).volumeOverSurface()).isCloseTo(0.003, within(1e-6));
        assertThat(new PartShape.SquareBar(0.012, 100).volumeOverSurface()).isCloseTo(0.003, within(1e-6));
        assertThat(new PartShape.Flat(0.006, 100, 100).volumeOverSurface()).isCloseTo(0.003, within(1e-6));
        assertThat(new PartShape.Tube(0.02, 0.01, 100).volumeOverSurface()).isCloseTo(0.0025, within(1e-6));
    }

    /** Exact: volume and surface of a cube of 10 mm are 1000 mm³ and 600 mm². */
    @Test
    void aCubeIsACubeHoweverItIsDescribed() {
        assertThat(new PartShape.SquareBar(0.01, 0.01).volumeOverSurface()).isCloseTo(0.01 / 6, within(1e-12));
        assertThat(new PartShape.Flat(0.01, 0.01, 0.01).volumeOverSurface()).isCloseTo(0.01 / 6, within(1e-12));
    }

    /** Exact: ring 20/10 × 10 mm has volume 750π mm³ and surface 450π mm². */
    @Test
    void aRingCoolsInsideOutsideAndAtItsFaces() {
        assertThat(new PartShape.Tube(0.02, 0.01, 0.01).volumeOverSurface()).isCloseTo(0.75 / 450, within(1e-12));
    }

    @Test
    void theSectionIsWhatGovernsHardening() {
        assertThat(new PartShape.RoundBar(0.012, 0.1).section()).isEqualTo(0.012);
        assertThat(new PartShape.SquareBar(0.012, 0.1).section()).isEqualTo(0.012);
        assertThat(new PartShape.Flat(0.006, 0.02, 0.1).section()).isEqualTo(0.006);
        assertThat(new PartShape.Tube(0.02, 0.01, 0.1).section()).isEqualTo(0.005);
    }

    @Test
    void impossibleSizesAreRefused() {
        assertThatThrownBy(() -> new PartShape.RoundBar(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PartShape.Tube(0.01, 0.01, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
