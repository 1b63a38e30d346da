package org.strawblue.core.pyrometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

class IndicatorsTest {

    private static double celsius(double c) {
        return c + 273.15;
    }

    private static double fahrenheit(double f) {
        return (f + 459.67) / 1.8;
    }

    /** IEC 60584-1, tolerances of classes 1 and 2. */
    @ParameterizedTest
    @CsvSource({"K,1,270,1.5", "K,1,800,3.2", "K,2,270,2.5", "K,2,800,6.0", "T,1,100,0.5", "N,2,600,4.5", "J,2,400,3.0"
    })
    void thermocouples(String type, int toleranceClass, double c, double tolerance) {
        IndicationError error = new Thermocouple(type, toleranceClass).errorAt(celsius(c));
        assertThat(error.tolerance()).isCloseTo(tolerance, within(1e-9));
        assertThat(error.sd()).isGreaterThan(tolerance / Math.sqrt(3));
    }

    @Test
    void noSuchThermocouple() {
        assertThatThrownBy(() -> new Thermocouple("Z", 1)).hasMessageContaining("type Z");
    }

    /** Stated accuracy of crayons: 1 % of the rating in °F, 4.5 °F at 450 °F. */
    @Test
    void crayons() {
        IndicationError error = new Crayons(List.of()).errorAt(fahrenheit(450));
        assertThat(error.tolerance()).isCloseTo(2.5, within(1e-5));
        assertThat(error.sd()).isBetween(3.0, 4.0);
    }

    @Test
    void theOvensDialIsTheWorstAndEachHasWords() {
        double dial = new OvenDial().errorAt(celsius(204)).sd();
        List<TemperatureIndicator> better =
                List.of(new OvenThermometer(), new Thermocouple("K", 2), new Crayons(List.of()), new InfraredGun(0.95));
        assertThat(better).allSatisfy(i -> {
            assertThat(i.errorAt(celsius(204)).sd()).isLessThan(dial);
            assertThat(i.words()).isNotBlank();
        });
        assertThat(new OvenDial().words()).contains("dial");
    }

    @Test
    void truthIsTheReadingWithItsInterval() {
        Estimate truth = new OvenThermometer().truth(celsius(200));
        assertThat(truth.value()).isEqualTo(celsius(200));
        assertThat(truth.high() - truth.low()).isCloseTo(2 * 1.2816 * 9, within(0.01));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 1.01})
    void anEmissivityIsAShare(double setting) {
        assertThatThrownBy(() -> new InfraredGun(setting)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Band band(double lowF, double highF) {
        return new Band(Dimension.TEMPERATURE, fahrenheit(lowF), fahrenheit(highF));
    }

    private static Crayons drawer(double... f) {
        return new Crayons(java.util.Arrays.stream(f)
                .map(IndicatorsTest::fahrenheit)
                .boxed()
                .toList());
    }

    @ParameterizedTest
    @CsvSource({"425, 475, 425, 475", "420, 480, 425, 475", "445, 455, 438, 450", "500, 560, 500, 550"})
    void thePairThatProvesABand(double low, double high, double slick, double dry) {
        CrayonChoice choice =
                CrayonChoice.of(band(low, high), new Crayons(List.of())).value().orElseThrow();
        assertThat(choice.slick()).isCloseTo(fahrenheit(slick), within(1e-6));
        assertThat(choice.dry()).isCloseTo(fahrenheit(dry), within(1e-6));
        assertThat(choice.proven().low()).isLessThan(choice.slick());
        assertThat(choice.proven().high()).isGreaterThan(choice.dry());
    }

    @Test
    void aPoorDrawerIsToldWhatToBuy() {
        Answer<CrayonChoice> answer = CrayonChoice.of(band(425, 475), drawer(300, 600));
        assertThat(answer.value()).isPresent();
        assertThat(answer.findings()).singleElement().isInstanceOf(Finding.Caution.class);
        assertThat(answer.findings().get(0).remedy().amounts()).hasSize(2);
    }

    @Test
    void oneCrayonProvesNothing() {
        assertThat(CrayonChoice.of(band(425, 475), drawer(450)).stopped()).isTrue();
    }

    @Test
    void aGoodDrawerIsLeftInPeace() {
        assertThat(CrayonChoice.of(band(425, 475), drawer(475, 425)).findings()).isEmpty();
    }

    @Test
    void theLadderRises() {
        assertThat(CrayonLadder.ratings()).isSorted().hasSizeGreaterThan(50);
    }
}
