package org.strawblue.app.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.core.job.Picture.ClockPoint;
import org.strawblue.core.job.Picture.ClockTrace;
import org.strawblue.core.job.Picture.HeatClock;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Phrase;

class ClockDrawingTest {

    /** A curve that rises to 500 K, behind another by so much on the way [K]. */
    private static ClockTrace rising(String place, double behind) {
        return new ClockTrace(
                place,
                IntStream.rangeClosed(0, 20)
                        .mapToObj(i -> {
                            double kelvin = 500 - 200 * Math.exp(-i / 3.0) - behind * Math.sin(Math.PI * i / 20);
                            return new ClockPoint(i * 30, kelvin, kelvin - 5, kelvin + 5);
                        })
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 3, 20, 39, 45, 80})
    void noNameLeavesTheDrawingHoweverFarApartTheCurvesLie(double behind) {
        HeatClock clock = new HeatClock(
                Phrase.of("warming"),
                List.of(rising("underside", 0), rising("top", behind)),
                Optional.empty(),
                Optional.empty(),
                List.of());
        Drawing drawing = new ClockDrawing(clock, new AmountWriter(UnitSystem.METRIC)).draw();
        List<Mark.Label> labels = drawing.marks().stream()
                .filter(Mark.Label.class::isInstance)
                .map(Mark.Label.class::cast)
                .toList();
        assertThat(labels).anyMatch(l -> l.text().equals("underside"));
        assertThat(labels).allSatisfy(l -> assertThat(l.right()).isLessThanOrEqualTo(Drawing.WIDTH));
    }
}
