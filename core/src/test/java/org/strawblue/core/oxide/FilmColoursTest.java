package org.strawblue.core.oxide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.colour.Light;
import org.strawblue.core.colour.StandardObserver;
import org.strawblue.core.colour.Tristimulus;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.history.Trace;

class FilmColoursTest {

    private static final FilmColours COLOURS = FilmColours.standard();
    private static final double EIGHT_MINUTES = 480;

    private static double fahrenheit(double f) {
        return (f + 459.67) / 1.8;
    }

    private static double celsius(double c) {
        return c + 273.15;
    }

    private static ColourReading after(double kelvin, double seconds) {
        return COLOURS.after(Trace.hold(kelvin, seconds), Light.DAYLIGHT, 0)
                .value()
                .orElseThrow();
    }

    private static Estimate temperature(ColourName name, double seconds) {
        return COLOURS.temperatureFor(name, seconds, Light.DAYLIGHT, 0).value().orElseThrow();
    }

    /** The trade's usual chart: common practice. */
    @ParameterizedTest
    @CsvSource({
        "425, faint straw",
        "460, straw",
        "480, dark straw",
        "490, yellow-brown",
        "500, yellow-brown",
        "510, red-brown",
        "530, purple",
        "540, purple",
        "560, dark blue",
        "580, blue",
        "590, blue",
        "610, light blue",
        "625, grey-blue",
        "650, grey"
    })
    void theUsualChartAtItsOwnExposure(double f, String word) {
        assertThat(after(fahrenheit(f), EIGHT_MINUTES).colour().name().word()).isEqualTo(word);
    }

    /** Colvin and Juthe 1921, means of five sources; the stated scatter is 13 K. */
    @ParameterizedTest
    @CsvSource({
        "FAINT_STRAW, 430",
        "STRAW, 458",
        "DARK_STRAW, 478",
        "PURPLE, 523",
        "DARK_PURPLE, 551",
        "DARK_BLUE, 572",
        "GREY_BLUE, 603"
    })
    void fiveSources(ColourName name, double f) {
        Estimate t = temperature(name, EIGHT_MINUTES);
        assertThat(t.value()).isCloseTo(fahrenheit(f), within(13.0));
        assertThat(t.band().contains(fahrenheit(f))).isTrue();
    }

    /** Nine ovens, clean straw: 207 ± 6 °C after 1.9 h. */
    @Test
    void strawInOvens() {
        assertThat(temperature(ColourName.STRAW, 1.9 * 3600).value()).isCloseTo(celsius(207), within(8.0));
    }

    @ParameterizedTest
    @EnumSource
    void everyNameComesOnceAndInOrderInEveryLight(Light light) {
        double last = -1;
        for (ColourName name : ColourName.values()) {
            assertThat(COLOURS.band(name, light).low()).as(name.word()).isGreaterThan(last);
            last = COLOURS.band(name, light).low();
        }
        ColourName before = ColourName.BRIGHT;
        for (double x = 0; x < FilmPalette.limit(); x += 0.1e-9) {
            ColourName here = COLOURS.colour(x, light).name();
            assertThat(here.ordinal() - before.ordinal()).as("at " + x).isBetween(0, 1);
            before = here;
        }
        assertThat(before).isEqualTo(ColourName.GREY);
    }

    @ParameterizedTest
    @EnumSource
    void coloursChangeSmoothly(Light light) {
        for (double x = 0; x < FilmPalette.limit() - 1e-9; x += 0.5e-9) {
            assertThat(COLOURS.colour(x, light)
                            .lab()
                            .distance(COLOURS.colour(x + 0.5e-9, light).lab()))
                    .as("at " + x)
                    .isLessThan(4);
        }
    }

    /** The table of colours against the exact optics between its points: error of Y below 10⁻⁴ of white. */
    @ParameterizedTest
    @ValueSource(doubles = {3, 13.1, 27.7, 36.4, 42.2, 59.9, 84.3, 121.5, 180.4, 240.2})
    void interpolationIsExactEnough(double nanometres) {
        double x = nanometres * 1e-9;
        FilmPalette palette = new FilmPalette(TemperFilm.standard(), Light.DAYLIGHT);
        double[] power = org.strawblue.core.colour.Illuminant.of(Light.DAYLIGHT).spectrum();
        double[] seen = StandardObserver.sample(l -> TemperFilm.standard().reflectance(l, x));
        Arrays.setAll(seen, i -> seen[i] * power[i]);
        Tristimulus exact = StandardObserver.weigh(seen)
                .times(1 / StandardObserver.weigh(power).y());
        assertThat(palette.even(x).x()).isCloseTo(exact.x(), within(1e-4));
        assertThat(palette.even(x).y()).isCloseTo(exact.y(), within(1e-4));
        assertThat(palette.even(x).z()).isCloseTo(exact.z(), within(3e-4));
    }

    @Test
    void theSameColourComesCoolerWithLongerTime() {
        for (ColourName name : EnumSet.range(ColourName.STRAW, ColourName.GREY_BLUE)) {
            List<FilmColours.SameColour> times = COLOURS.sameColour(name, Light.DAYLIGHT, 120, 480, 3600, 14400);
            for (int i = 1; i < times.size(); i++) {
                assertThat(value(times.get(i).temperature()))
                        .isLessThan(value(times.get(i - 1).temperature()) - 10);
            }
        }
    }

    private static double value(Answer<Estimate> answer) {
        return answer.value().orElseThrow().value();
    }

    /** Colour to temperature to colour. */
    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"BRIGHT", "GREY"})
    void thereAndBack(ColourName name) {
        for (double seconds : new double[] {30, 480, 3600, 86400}) {
            Estimate t = temperature(name, seconds);
            assertThat(after(t.value(), seconds).colour().name()).isEqualTo(name);
        }
        double middle = COLOURS.band(name, Light.DAYLIGHT).middle();
        assertThat(value(COLOURS.temperatureFor(middle, 480, 0)))
                .isCloseTo(temperature(name, 480).value(), within(1e-6));
    }

    /** The scatter to be told: 13 K at 10 min, 15 K at 2 h, 20 K at 8 h, more at the ends. */
    @Test
    void intervalsWidenAwayFromTheChart() {
        double chart = halfWidth(600);
        assertThat(chart).isBetween(1.28 * 13, 1.28 * 15);
        assertThat(halfWidth(7200)).isGreaterThan(chart);
        assertThat(halfWidth(8 * 3600)).isGreaterThan(halfWidth(7200));
        assertThat(halfWidth(10)).isGreaterThan(chart);
    }

    private static double halfWidth(double seconds) {
        Estimate t = temperature(ColourName.PURPLE, seconds);
        return (t.high() - t.low()) / 2;
    }

    @Test
    void theRivalsAgreeAtTheChartAndPartAwayFromIt() {
        ColourReading chart = after(celsius(290), EIGHT_MINUTES);
        assertThat(chart.rivals())
                .allSatisfy(r -> assertThat(r.colour().thickness())
                        .isCloseTo(chart.colour().thickness(), within(2e-9)));
        ColourReading days = after(celsius(180), 9 * 86400);
        assertThat(days.rivals().get(0).colour().thickness())
                .isGreaterThan(2 * days.rivals().get(1).colour().thickness());
        assertThat(days.rivals())
                .allSatisfy(r -> assertThat(
                                days.thickness().band().contains(r.colour().thickness()))
                        .isTrue());
    }

    @Test
    void theReadingHoldsItsInterval() {
        ColourReading reading = after(celsius(249), EIGHT_MINUTES);
        assertThat(reading.thinner().thickness()).isEqualTo(reading.thickness().low());
        assertThat(reading.thicker().name()).isGreaterThan(reading.thinner().name());
        assertThat(reading.thickness().weak()).isTrue();
        assertThat(reading.light()).isEqualTo(Light.DAYLIGHT);
        assertThat(reading.colour().hex()).matches("#[0-9a-f]{6}");
    }

    @Test
    void theChartsFailureIsToldWhereItMatters() {
        Trace chart = Trace.hold(celsius(204), EIGHT_MINUTES);
        assertThat(COLOURS.after(chart, Light.DAYLIGHT, 0).findings()).isEmpty();
        Trace oven = Trace.hold(celsius(204), 4 * 3600);
        assertThat(COLOURS.after(oven, Light.DAYLIGHT, 0).findings())
                .singleElement()
                .isInstanceOf(Finding.Note.class)
                .extracting(f -> f.what().template())
                .asString()
                .contains("usual chart");
    }

    /** A torch has the steel hotter than the chart says: 20 to 300 °C in a minute leaves faint straw only. */
    @Test
    void torch() {
        Trace torch = Trace.ramp(celsius(20), celsius(300), 60).then(Trace.ramp(celsius(300), celsius(20), 5));
        ColourReading reading = COLOURS.after(torch, Light.DAYLIGHT, 0).value().orElseThrow();
        assertThat(reading.colour().name()).isEqualTo(ColourName.FAINT_STRAW);
    }

    @ParameterizedTest
    @CsvSource({"140, 480, 0", "460, 480, 0", "250, 4, 0", "250, 900000, 0", "250, 480, 12"})
    void outsideItsRangeItStopsWithTheLimits(double c, double seconds, double chromium) {
        Answer<ColourReading> answer = COLOURS.after(Trace.hold(celsius(c), seconds), Light.DAYLIGHT, chromium);
        assertThat(answer.value()).isEmpty();
        assertThat(answer.stopped()).isTrue();
        assertThat(answer.findings().get(0).what().amounts()).hasSize(3);
    }

    @Test
    void everyStopIsTold() {
        assertThat(COLOURS.after(Trace.hold(celsius(500), 1), Light.LAMP, 13).findings())
                .hasSize(3);
    }

    /** O1 and 5160 colour with plain carbon steel; 5 % chromium comes hotter, and wider; 12 % not at all. */
    @Test
    void chromium() {
        Estimate plain = temperature(ColourName.STRAW, 3600);
        Answer<Estimate> low = COLOURS.temperatureFor(ColourName.STRAW, 3600, Light.DAYLIGHT, 0.5);
        assertThat(low.value()).contains(plain);
        assertThat(low.findings()).isEmpty();
        Answer<Estimate> five = COLOURS.temperatureFor(ColourName.STRAW, 3600, Light.DAYLIGHT, 5);
        assertThat(value(five) - plain.value()).isBetween(15.0, 45.0);
        Estimate widened = five.value().orElseThrow();
        assertThat(widened.high() - widened.low()).isGreaterThan(plain.high() - plain.low() + 5);
        assertThat(five.findings()).singleElement().isInstanceOf(Finding.Caution.class);
        assertThat(COLOURS.temperatureFor(ColourName.STRAW, 3600, Light.DAYLIGHT, 12)
                        .stopped())
                .isTrue();
        assertThat(COLOURS.temperatureFor(30e-9, 3600, 12).stopped()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"BRIGHT, below", "GREY, above"})
    void openEndedColoursGiveALimitOnly(ColourName name, String side) {
        Answer<Estimate> answer = COLOURS.temperatureFor(name, 600, Light.DAYLIGHT, 0);
        assertThat(answer.value()).isEmpty();
        assertThat(answer.findings().get(0).what().template()).contains(side);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 300e-9})
    void aThicknessThatIsNoColourIsRefused(double thickness) {
        assertThat(COLOURS.temperatureFor(thickness, 600, 0).stopped()).isTrue();
    }

    @Test
    void aColourThatWouldNeedMoreThanTheLawsRangeIsRefused() {
        assertThat(COLOURS.temperatureFor(ColourName.FAINT_STRAW, 800000, Light.DAYLIGHT, 0)
                        .stopped())
                .isTrue();
    }

    @Test
    void ribbon() {
        List<RibbonColour> ribbon = COLOURS.ribbon(3600, Light.LAMP, celsius(150), celsius(350), 41);
        assertThat(ribbon).hasSize(41);
        assertThat(ribbon.get(40).kelvin()).isEqualTo(celsius(350));
        for (int i = 1; i < ribbon.size(); i++) {
            assertThat(ribbon.get(i).colour().name())
                    .isGreaterThanOrEqualTo(ribbon.get(i - 1).colour().name());
        }
    }

    @Test
    void aFilmOfHematiteAloneShowsNoStraw() {
        OpticalConstants hematite = OpticalConstants.hematite();
        FilmPalette palette =
                new FilmPalette(new TemperFilm(OpticalConstants.iron(), hematite, hematite, 1), Light.DAYLIGHT);
        for (double x = 0; x < FilmPalette.limit(); x += 1e-9) {
            assertThat(palette.colour(x).name())
                    .isNotIn(ColourName.STRAW, ColourName.DARK_STRAW, ColourName.YELLOW_BROWN);
        }
    }

    @Test
    void chartExposure() {
        assertThat(COLOURS.chartSeconds()).isEqualTo(480);
    }

    @ParameterizedTest
    @CsvSource({
        "straw, STRAW", "Pale Yellow, FAINT_STRAW", "dark yellow, DARK_STRAW", "brown, YELLOW_BROWN",
        "peacock, RED_BROWN", "violet, DARK_PURPLE", "gray blue, GREY_BLUE", "Sky-Blue, LIGHT_BLUE"
    })
    void coloursAreFoundByTheTradesWords(String word, ColourName name) {
        assertThat(ColourName.find(word)).contains(name);
    }

    @Test
    void noSuchColour() {
        assertThat(ColourName.find("chartreuse")).isEmpty();
        assertThat(ColourName.vocabulary().nearest("strow", 1)).containsExactly("straw");
    }
}
