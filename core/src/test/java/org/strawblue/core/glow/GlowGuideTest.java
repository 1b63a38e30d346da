package org.strawblue.core.glow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;

class GlowGuideTest {

    private static double celsius(double c) {
        return c + 273.15;
    }

    private static GlowReading at(double c) {
        return GlowGuide.at(celsius(c)).value().orElseThrow();
    }

    /** White and Taylor 1899; every name must hold what they gave for it. */
    @ParameterizedTest
    @CsvSource({
        "dark red, 635",
        "dull cherry, 677",
        "cherry, 746",
        "bright cherry, 843",
        "orange-red, 899",
        "orange, 941",
        "yellow, 996",
        "white, 1079"
    })
    void whiteAndTaylor(String name, double c) {
        GlowColour colour = GlowGuide.named(name).orElseThrow();
        assertThat(colour.temperature().band().contains(celsius(c))).isTrue();
        assertThat(at(c).names()).contains(colour);
    }

    @Test
    void namesRiseAndAreWide() {
        double last = 0;
        for (GlowColour colour : GlowGuide.colours()) {
            assertThat(colour.temperature().value()).isGreaterThan(last);
            last = colour.temperature().value();
        }
        Estimate cherry = GlowGuide.named("cherry").orElseThrow().temperature();
        assertThat(cherry.high() - cherry.low()).isGreaterThan(150);
        assertThat(GlowGuide.named("puce")).isEmpty();
    }

    @Test
    void theLikeliestNameComesFirst() {
        assertThat(at(795).names().get(0).name()).isIn("cherry", "dull cherry");
        assertThat(at(795).names()).hasSizeGreaterThan(1);
    }

    @Test
    void theGlowBrightensAndItsSwatchTurnsFromBlackThroughRed() {
        assertThat(at(800).luminance()).isGreaterThan(5 * at(700).luminance());
        assertThat(at(450).hex()).isEqualTo("#000000");
        assertThat(at(843).hex()).matches("#[89a-f].[0-4].00");
    }

    /** Old experience: red heat is first seen by day near 525 °C, in the dark near 470; in a lit shop far later. */
    @Test
    void aLitShopHidesTheGlow() {
        assertThat(GlowGuide.at(celsius(750)).findings()).singleElement().isInstanceOf(Finding.Caution.class);
        assertThat(GlowGuide.at(celsius(900)).findings()).isEmpty();
        assertThat(at(750).shopLuminance()).isCloseTo(31.8, within(0.1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {300, 1500})
    void outsideTheGuide(double c) {
        assertThat(GlowGuide.at(celsius(c)).stopped()).isTrue();
    }

    /** The Curie point of iron is 770 °C (handbooks); eutectoid steel loses its magnetism from Ac1, near 730 °C. */
    @Test
    void magnet() {
        Answer<Estimate> letsGo = Magnet.letsGo(celsius(735), celsius(800));
        Estimate estimate = letsGo.value().orElseThrow();
        assertThat(estimate.low()).isEqualTo(celsius(735));
        assertThat(estimate.high()).isEqualTo(celsius(770));
        assertThat(letsGo.findings()).singleElement().isInstanceOf(Finding.Note.class);
    }

    @Test
    void theMagnetAloneDoesNotMeanAustenite() {
        Answer<Estimate> letsGo = Magnet.letsGo(celsius(810), celsius(1000));
        assertThat(letsGo.value().orElseThrow().value()).isEqualTo(celsius(770));
        assertThat(letsGo.findings()).singleElement().isInstanceOf(Finding.Caution.class);
    }
}
