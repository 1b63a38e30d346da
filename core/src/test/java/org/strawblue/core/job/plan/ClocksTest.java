package org.strawblue.core.job.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.job.Figure;
import org.strawblue.core.job.HardenWish;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.Step;
import org.strawblue.core.job.TemperWish;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;

/** The clocks that the card gives for an oven, a torch and a stepped pin on a plate. */
class ClocksTest {

    private static Step temper(String source, PartShape shape, Band wanted, double celsius, double seconds) {
        WorkPiece plain = Jobs.pin("W1");
        TemperWish wish = new TemperWish(
                Optional.of(HeatSources.of(source)),
                celsius > 0 ? OptionalDouble.of(celsius + 273.15) : OptionalDouble.empty(),
                seconds > 0 ? OptionalDouble.of(seconds) : OptionalDouble.empty(),
                OptionalInt.of(1));
        WorkPiece piece = new WorkPiece(
                plain.name(),
                plain.steel(),
                Optional.of(shape),
                plain.duty(),
                Optional.of(wanted),
                plain.asQuenched(),
                HardenWish.OPEN,
                wish,
                List.of());
        return Planner.plan(Jobs.of(piece)).steps().stream()
                .filter(s -> s.stage() == Stage.TEMPER)
                .findFirst()
                .orElseThrow();
    }

    private static Band hrc(double low, double high) {
        return new Band(Dimension.HARDNESS, low, high);
    }

    private static Estimate figure(Step step, String label) {
        return step.figures().stream()
                .filter(f -> f.label().equals(label))
                .map(Figure::estimate)
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " in " + step.figures()));
    }

    private static Picture.HeatClock clock(Step step) {
        return step.pictures().stream()
                .filter(Picture.HeatClock.class::isInstance)
                .map(Picture.HeatClock.class::cast)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Minutes until a bar's centre is within 10 K of 270 °C in a still oven, bright and oxidised, by a separate radial
     * finite-volume model (emissivities 0.15 and 0.8, film 6 W/m²K; assumed figures).
     */
    @ParameterizedTest
    @CsvSource({"6, 32, 11", "12, 63, 23", "25, 132, 47"})
    void anOvenTakesWhatARadialModelSays(double mm, double bright, double black) {
        Step step = temper("kitchen-oven", new PartShape.RoundBar(mm / 1000, 10), hrc(56, 60), 270, 3600);
        assertThat(figure(step, "Bright, it is hot after").value() / 60).isCloseTo(bright, within(0.06 * bright));
        assertThat(figure(step, "Black, it is hot after").value() / 60).isCloseTo(black, within(0.08 * black));
    }

    @Test
    void theOvensClockStartsWhenThePartIsHot() {
        Step step = temper("kitchen-oven", new PartShape.RoundBar(0.012, 0.06), hrc(58, 62), 0, 3600);
        Estimate hot = figure(step, "Bright, it is hot after");
        List<Amount> said = step.then().get(0).amounts();
        assertThat(said).contains(Quantity.time(hot.value()), Quantity.time(3600), Quantity.time(hot.value() + 3600));
        Picture.HeatClock clock = clock(step);
        assertThat(clock.traces()).extracting(Picture.ClockTrace::place).containsExactly("bright", "black");
        assertThat(clock.pull().orElseThrow().contains(hot.value() + 3600)).isTrue();
        clock.traces().forEach(t -> {
            assertThat(t.points()).allMatch(p -> p.low() <= p.kelvin() && p.kelvin() <= p.high());
            for (int i = 1; i < t.points().size(); i++) {
                assertThat(t.points().get(i).seconds())
                        .isGreaterThan(t.points().get(i - 1).seconds());
                assertThat(t.points().get(i).kelvin())
                        .isGreaterThanOrEqualTo(t.points().get(i - 1).kelvin());
            }
        });
    }

    /** Ø12 bright in a still oven follows 0.12 of a swing of 15 min, by the radial model above. */
    @Test
    void aThickPartHardlyFeelsTheSwing() {
        Step step = temper("kitchen-oven", new PartShape.RoundBar(0.012, 10), hrc(56, 60), 270, 3600);
        List<Amount> said = step.reasons().stream()
                .filter(r -> r.template().contains("follows it"))
                .findFirst()
                .orElseThrow()
                .amounts();
        double share = ((Quantity) said.get(2)).si() / ((Quantity) said.get(0)).si();
        assertThat(share).isCloseTo(0.12, within(0.03));
    }

    @Test
    void theTorchLeavesSecondsAndNoNumberForAHeatRunUpInOneGo() {
        Step step = temper("propane-torch", new PartShape.RoundBar(0.006, 0.09), hrc(54, 57), 0, 0);
        assertThat(figure(step, "Then the window lasts").value()).isBetween(1.0, 20.0);
        assertThat(step.then().get(0).template()).contains("stop it in water");
        assertThat(step.findings())
                .anySatisfy(f -> assertThat(f.what().template()).contains("no hardness is told below"));
        assertThat(step.reasons()).anySatisfy(r -> assertThat(r.template()).contains("when the flame is gone"));
    }

    /** A hand torch on one side of a thick bar: the thicker, the slower, about as its section. */
    @Test
    void aThickerPartLeavesMoreTime() {
        double thin = figure(
                        temper("propane-torch", new PartShape.RoundBar(0.01, 0.09), hrc(54, 57), 0, 0),
                        "Then the window lasts")
                .value();
        double thick = figure(
                        temper("propane-torch", new PartShape.RoundBar(0.02, 0.09), hrc(54, 57), 0, 0),
                        "Then the window lasts")
                .value();
        assertThat(thick / thin).isBetween(1.6, 2.4);
    }

    /** Below 40 s no number: the limit stands in the finding beside the value. */
    @Test
    void aTemperOfHalfAMinuteIsRefusedWithItsLimits() {
        WorkPiece plain = Jobs.pin("W1");
        TemperWish wish = new TemperWish(
                Optional.of(HeatSources.of("propane-torch")),
                OptionalDouble.empty(),
                OptionalDouble.of(30),
                OptionalInt.of(1));
        WorkPiece piece = Jobs.with(plain, Optional.of(hrc(54, 57)), HardenWish.OPEN, wish);
        assertThat(Planner.plan(Jobs.of(piece)).allFindings())
                .filteredOn(Finding.Stop.class::isInstance)
                .anySatisfy(f -> assertThat(f.what().amounts()).contains(Quantity.time(30)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"hot-plate", "kitchen-oven", "fan-oven", "toaster-oven", "kiln", "sand-tray", "propane-torch"})
    void everyShapeIsPlannedInEveryHeat(String source) {
        List<PartShape> shapes = List.of(
                new PartShape.RoundBar(0.008, 0.05),
                new PartShape.SquareBar(0.008, 0.05),
                new PartShape.Flat(0.003, 0.02, 0.06),
                new PartShape.Tube(0.02, 0.012, 0.02),
                new PartShape.SteppedPin(List.of(
                        new PartShape.SteppedPin.Piece(0.006, 0.012), new PartShape.SteppedPin.Piece(0.01, 0.03))));
        for (PartShape shape : shapes) {
            Step step = temper(source, shape, hrc(58, 62), 0, 0);
            assertThat(step.figures()).isNotEmpty();
        }
    }

    @Test
    void aSteppedPinsWorkingEndHasAFigureOfItsOwn() {
        PartShape pin = new PartShape.SteppedPin(
                List.of(new PartShape.SteppedPin.Piece(0.006, 0.012), new PartShape.SteppedPin.Piece(0.01, 0.03)));
        Step step = temper("hot-plate", pin, hrc(58, 62), 0, 0);
        Estimate end = figure(step, "Working end by then");
        assertThat(end.value()).isCloseTo(figure(step, "Top by then").value(), within(15.0));
        assertThat(step.pictures()).anyMatch(Picture.SectionWarming.class::isInstance);
    }
}
