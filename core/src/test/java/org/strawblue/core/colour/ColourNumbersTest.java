package org.strawblue.core.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourNumbersTest {

    /** The sRGB primaries and their L*a*b* against D65 (IEC 61966-2-1; Lab as given in colour calculators). */
    @ParameterizedTest
    @CsvSource({
        "0.4124564, 0.2126729, 0.0193339, #ff0000, 53.24, 80.09, 67.20",
        "0.3575761, 0.7151522, 0.1191920, #00ff00, 87.73, -86.18, 83.18",
        "0.1804375, 0.0721750, 0.9503041, #0000ff, 32.30, 79.19, -107.86"
    })
    void primaries(double x, double y, double z, String hex, double lightness, double a, double b) {
        Tristimulus colour = new Tristimulus(x, y, z);
        Lab lab = new Appearance(Light.DAYLIGHT).lab(colour);
        assertThat(Srgb.hex(colour)).isEqualTo(hex);
        assertThat(lab.lightness()).isCloseTo(lightness, within(0.05));
        assertThat(lab.a()).isCloseTo(a, within(0.15));
        assertThat(lab.b()).isCloseTo(b, within(0.15));
    }

    /** Half-grey: 18.42 % reflectance is L* = 50, and sRGB 119 (colour science textbooks). */
    @Test
    void middleGrey() {
        Tristimulus grey = Illuminant.of(Light.DAYLIGHT).white().times(0.18418651851244416);
        assertThat(new Appearance(Light.DAYLIGHT).lab(grey).lightness()).isCloseTo(50, within(1e-9));
        assertThat(Srgb.hex(grey)).isEqualTo("#777777");
    }

    @Test
    void darkColoursFollowTheStraightPartOfBothCurves() {
        Tristimulus dark = Illuminant.of(Light.DAYLIGHT).white().times(0.001);
        assertThat(new Appearance(Light.DAYLIGHT).lab(dark).lightness()).isCloseTo(0.9033, within(1e-4));
        assertThat(Srgb.hex(dark)).isEqualTo("#030303");
    }

    @Test
    void hueAndChroma() {
        assertThat(new Lab(50, 3, 4).chroma()).isEqualTo(5);
        assertThat(new Lab(50, 0, -4).hue()).isEqualTo(270);
        assertThat(new Lab(50, 0, 0).distance(new Lab(48, 2, 1))).isCloseTo(3, within(1e-12));
    }

    /** Wyszecki and Stiles, Color Science: the black-body locus. From memory. */
    @ParameterizedTest
    @CsvSource({"1000, 0.6528, 0.3444", "1500, 0.5857, 0.3931", "2000, 0.5267, 0.4133"})
    void planckLocus(double kelvin, double x, double y) {
        assertThat(Planck.light(kelvin).chromaticityX()).isCloseTo(x, within(2e-4));
        assertThat(Planck.light(kelvin).chromaticityY()).isCloseTo(y, within(2e-4));
    }

    /** The candela of 1948: 60 cd/cm² at the freezing point of platinum, 2041.4 K on today's scale. */
    @Test
    void platinumPoint() {
        assertThat(Planck.light(2041.4).y()).isCloseTo(6e5, within(6e3));
    }

    /** Wien: the peak lies at 2897.77 µm K. */
    @Test
    void wien() {
        double peak = 2897.77e-6 / 1000;
        assertThat(Planck.radiance(peak, 1000))
                .isGreaterThan(Planck.radiance(peak * 1.001, 1000))
                .isGreaterThan(Planck.radiance(peak * 0.999, 1000));
    }
}
