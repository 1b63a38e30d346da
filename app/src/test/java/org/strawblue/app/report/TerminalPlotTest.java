package org.strawblue.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;

class TerminalPlotTest {

    private static final double ZERO = 273.15;

    /** A part that warms towards {@code end} °C with this time constant [s], told over five of them. */
    private static Picture.ClockTrace trace(String place, double end, double tau, double doubt) {
        List<Picture.ClockPoint> points = new ArrayList<>();
        for (int i = 0; i <= 100; i++) {
            double t = tau * i / 20;
            double k = ZERO + 20 + (end - 20) * (1 - Math.exp(-t / tau));
            points.add(new Picture.ClockPoint(t, k, k - doubt, k + doubt));
        }
        return new Picture.ClockTrace(place, points);
    }

    private static Picture.HeatClock clock(double end, double tau) {
        return new Picture.HeatClock(
                Phrase.of("caption"),
                List.of(trace("underside", end, tau, 10), trace("top", end - 5, tau, 10)),
                Optional.of(new Band(Dimension.TEMPERATURE, ZERO + end - 30, ZERO + end - 10)),
                Optional.of(new Band(Dimension.TIME, 2 * tau, 3 * tau)),
                List.of(
                        new Picture.ColourSpan(2 * tau, 3 * tau, "straw", "#ccaa66"),
                        new Picture.ColourSpan(3 * tau, 5 * tau, "blue", "#334488")));
    }

    private static String plot(Picture.HeatClock clock, Screen screen) {
        TextBlock out = new TextBlock(screen);
        new TerminalPlot(clock, new AmountWriter(UnitSystem.METRIC), screen, out, 2).write();
        return out.toString();
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 60, 80, 100, 120})
    void noLineIsWiderThanTheScreen(int columns) {
        assertThat(plot(clock(270, 140), Screen.plain(columns)).lines())
                .allSatisfy(l -> assertThat(Wrap.length(l)).isLessThanOrEqualTo(columns));
    }

    @Test
    void withoutMoreThanAsciiNothingElseIsPrinted() {
        String plot = plot(clock(270, 140), new Screen(80, false, false, false));
        assertThat(plot.chars()).allMatch(c -> c < 128);
        assertThat(plot).contains("u").contains("*").contains("take it off");
    }

    @Test
    void namesBandAndColoursAreThere() {
        String plot = plot(clock(270, 140), Screen.plain(80));
        assertThat(plot).contains("underside", "top", "░", "▲ take it off", "│straw", "│blue", "°C", "min");
    }

    @Test
    void theRibbonIsInColourWhereThereIsColour() {
        String plot = plot(clock(270, 140), new Screen(80, true, true));
        assertThat(plot).contains("\u001b[48;2;204;170;102m").contains("\u001b[48;2;51;68;136m");
    }

    /** The curve's last dot lies on the row of its last temperature. */
    @Test
    void theCurveEndsWhereItsTemperatureLies() {
        Picture.HeatClock level = new Picture.HeatClock(
                Phrase.of("caption"),
                List.of(new Picture.ClockTrace(
                        "part",
                        List.of(
                                new Picture.ClockPoint(0, ZERO + 200, ZERO + 200, ZERO + 200),
                                new Picture.ClockPoint(60, ZERO + 200, ZERO + 200, ZERO + 200)))),
                Optional.empty(),
                Optional.empty(),
                List.of());
        String row = plot(level, new Screen(80, false, false, false))
                .lines()
                .filter(l -> l.contains("pppp"))
                .findFirst()
                .orElseThrow();
        assertThat(row).contains("200 +").endsWith(" part");
    }

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyClockCanBeDrawn(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Picture.HeatClock clock = clock(random.nextDouble(25, 1200), Math.exp(random.nextDouble(-3, 10)));
        boolean unicode = random.nextBoolean();
        String plot = plot(clock, new Screen(random.nextInt(20, 140), false, false, unicode));
        assertThat(plot.lines().count()).isBetween(18L, 26L);
    }
}
