package org.strawblue.core.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.history.Trace;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.oxide.FilmColours;

class FinishesTest {

    private static HeatBlue at(double celsius, ColourName colour) {
        return HeatBlue.at(273.15 + celsius, colour, Light.DAYLIGHT, 0).value().orElseThrow();
    }

    /** Loewenherz 1889 (encyclopaedia): dark blue at 290 °C in 7 to 15 minutes, at 230 °C in 50 hours: the first inside, the second in the interval's reach. */
    @Test
    void darkBlueComesWhenItWasSeenToCome() {
        assertThat(at(290, ColourName.DARK_BLUE).seconds().value()).isBetween(7 * 60.0, 15 * 60.0);
        assertThat(at(290, ColourName.DARK_BLUE).seconds().band().contains(11 * 60))
                .isTrue();
    }

    /** The film law itself, asked straight: after the told time the colour has its name, and it has it from first to last. */
    @ParameterizedTest
    @EnumSource(
            value = ColourName.class,
            names = {"STRAW", "PURPLE", "DARK_BLUE", "LIGHT_BLUE"})
    void theColourIsThereWhileItIsTold(ColourName colour) {
        HeatBlue blue = at(280, colour);
        assertThat(blue.from()).isLessThan(blue.seconds().value());
        assertThat(blue.until()).isGreaterThan(blue.seconds().value());
        for (double seconds : new double[] {blue.from() * 1.05, blue.seconds().value(), blue.until() * 0.95}) {
            assertThat(FilmColours.standard()
                            .after(Trace.hold(blue.kelvin(), seconds), Light.DAYLIGHT, 0)
                            .value()
                            .orElseThrow()
                            .colour()
                            .name())
                    .isEqualTo(colour);
        }
    }

    /** Cooler takes longer and the colour stays longer; the later colours come later; grey comes last. */
    @Test
    void coolerIsSlowerAndSafer() {
        HeatBlue hot = at(300, ColourName.DARK_BLUE);
        HeatBlue cool = at(275, ColourName.DARK_BLUE);
        assertThat(cool.seconds().value()).isGreaterThan(hot.seconds().value());
        assertThat(cool.until() - cool.from()).isGreaterThan(hot.until() - hot.from());
        assertThat(hot.grey().map(Estimate::value).orElseThrow()).isGreaterThan(hot.until());
        assertThat(at(300, ColourName.STRAW).seconds().value())
                .isLessThan(hot.seconds().value());
        assertThat(hot.greyKelvin().orElseThrow()).isPositive();
    }

    /** A time asked gives the temperature at which it comes in that time. */
    @ParameterizedTest
    @CsvSource({"STRAW, 1200", "DARK_BLUE, 600", "PURPLE, 3600"})
    void timeAndTemperatureAreInverse(ColourName colour, double seconds) {
        HeatBlue blue = HeatBlue.in(seconds, colour, Light.DAYLIGHT, 0).value().orElseThrow();
        assertThat(blue.seconds().value()).isCloseTo(seconds, within(0.02 * seconds));
    }

    /** Two pieces as far apart as told differ by no more than the limit; twice as far they differ more. */
    @Test
    void piecesApartAsToldLookAlike() {
        HeatBlue blue = at(285, ColourName.PURPLE);
        assertThat(blue.apart()).isBetween(0.2, 10.0);
        assertThat(difference(blue, blue.apart())).isLessThanOrEqualTo(3.2);
        assertThat(difference(blue, 3 * blue.apart())).isGreaterThan(3.0);
    }

    private static double difference(HeatBlue blue, double kelvin) {
        var films = FilmColours.standard();
        double seconds = blue.seconds().value();
        var one = films.after(Trace.hold(blue.kelvin(), seconds), Light.DAYLIGHT, 0)
                .value()
                .orElseThrow();
        var other = films.after(Trace.hold(blue.kelvin() + kelvin, seconds), Light.DAYLIGHT, 0)
                .value()
                .orElseThrow();
        return one.colour().lab().distance(other.colour().lab());
    }

    @Test
    void whatDoesNotComeIsRefused() {
        assertThat(HeatBlue.at(430, ColourName.LIGHT_BLUE, Light.DAYLIGHT, 0).value())
                .isEmpty();
        assertThat(HeatBlue.at(900, ColourName.STRAW, Light.DAYLIGHT, 0).value())
                .isEmpty();
        assertThat(HeatBlue.at(560, ColourName.STRAW, Light.DAYLIGHT, 12).value())
                .isEmpty();
        var fast = HeatBlue.at(640, ColourName.DARK_BLUE, Light.DAYLIGHT, 0);
        assertThat(fast.findings())
                .anyMatch(f ->
                        f instanceof Finding.Caution c && c.what().template().contains("only"));
    }

    /** Guide to black oxide: 0.5 to 2 µm, about half of it inward: a diameter grows by the layer's thickness or so. */
    @Test
    void blackOxideAddsAboutItsThicknessToADiameter() {
        Blackening hot = Blackening.find("black oxide").orElseThrow();
        assertThat(hot.layer().low()).isCloseTo(0.5e-6, within(1e-12));
        assertThat(hot.layer().high()).isCloseTo(2e-6, within(1e-12));
        assertThat(hot.onDiameter().band().contains(hot.layer().value())).isTrue();
        assertThat(hot.atHome()).isFalse();
        assertThat(hot.findings(Optional.of(393.0))).hasSize(2);
        assertThat(hot.findings(Optional.of(453.0))).hasSize(1);
    }

    @Test
    void everyFinishIsKnownAndCautioned() {
        assertThat(Blackening.names()).hasSize(4);
        for (String name : Blackening.names()) {
            Blackening finish = Blackening.find(name).orElseThrow();
            assertThat(finish.findings(Optional.empty())).isNotEmpty().allMatch(Finding.Caution.class::isInstance);
            assertThat(finish.onDiameter().low()).isGreaterThanOrEqualTo(0);
        }
    }
}
