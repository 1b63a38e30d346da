package org.strawblue.core.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LightsTest {

    /** Chromaticities of D65 and A: ISO 11664-2. */
    @ParameterizedTest
    @CsvSource({"DAYLIGHT, 0.31272, 0.32903", "LAMP, 0.44757, 0.40745"})
    void whitesAreThoseOfTheStandard(Light light, double x, double y) {
        Tristimulus white = Illuminant.of(light).white();
        assertThat(white.chromaticityX()).isCloseTo(x, within(5e-5));
        assertThat(white.chromaticityY()).isCloseTo(y, within(5e-5));
        assertThat(white.y()).isCloseTo(1, within(1e-12));
    }

    /** The two LEDs' whites lie on the locus of black bodies at 2700 and 4000 K. */
    @ParameterizedTest
    @CsvSource({"WARM_LED, 2700", "NEUTRAL_LED, 4000"})
    void ledsHaveTheWhiteOfABlackBody(Light light, double kelvin) {
        Tristimulus white = Illuminant.of(light).white();
        Tristimulus body = Planck.light(kelvin);
        assertThat(white.chromaticityX()).isCloseTo(body.chromaticityX(), within(0.001));
        assertThat(white.chromaticityY()).isCloseTo(body.chromaticityY(), within(0.001));
    }

    /** D65 at 560 nm is 100 by definition; at 400 and 700 nm 82.75 and 71.61 (ISO 11664-2). */
    @Test
    void daylightIsD65WaveByWave() {
        double[] spectrum = Illuminant.of(Light.DAYLIGHT).spectrum();
        assertThat(spectrum[(560 - 380) / 5]).isCloseTo(100, within(0.01));
        assertThat(spectrum[(400 - 380) / 5]).isCloseTo(82.7549, within(0.01));
        assertThat(spectrum[(700 - 380) / 5]).isCloseTo(71.6091, within(0.01));
    }

    @ParameterizedTest
    @EnumSource
    void aPerfectWhiteIsWhiteInEveryLight(Light light) {
        Appearance appearance = new Appearance(light);
        Tristimulus white = Illuminant.of(light).white();
        assertThat(appearance.lab(white).lightness()).isCloseTo(100, within(1e-9));
        assertThat(appearance.lab(white).chroma()).isCloseTo(0, within(1e-6));
        assertThat(appearance.hex(white)).isEqualTo("#ffffff");
    }

    @ParameterizedTest
    @CsvSource({
        "daylight,DAYLIGHT",
        "D65,DAYLIGHT",
        "Lamp,LAMP",
        "TUNGSTEN,LAMP",
        "warm led,WARM_LED",
        "led,NEUTRAL_LED"
    })
    void lightsAreFoundByTheirWords(String word, Light light) {
        assertThat(Light.find(word)).contains(light);
    }

    @Test
    void noSuchLight() {
        assertThat(Light.find("moonshine")).isEmpty();
    }
}
