package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.ThermalHistory;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.plan.PlateHeat.Pace;
import org.strawblue.core.oxide.ColourReading;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.HollomonJaffe;
import org.strawblue.core.steel.Tempering;
import org.strawblue.core.watch.Goal;
import org.strawblue.core.watch.PullWindow;
import org.strawblue.core.watch.Reading;
import org.strawblue.core.watch.TemperWatch;

/** The clock of a temper on a hot plate: how to set it, when to take the part off, what being late costs. */
final class PlateClock {

    private static final int POINTS = 40;

    private final Brief brief;
    private final TemperPlan plan;
    private final Aim aim;
    private final StepDraft step;
    private final PlateHeat covered;
    private final PlateHeat bare;

    private PlateClock(Brief brief, TemperPlan plan, Aim aim, StepDraft step) {
        this.brief = brief;
        this.plan = plan;
        this.aim = aim;
        this.step = step;
        double plate = plan.kelvin() + Practice.plateAbove();
        this.covered = new PlateHeat(brief.shape(), plate, true);
        this.bare = new PlateHeat(brief.shape(), plate, false);
    }

    /** Adds to the step what the plate does; nothing where the steel's law cannot follow it. */
    static void over(Brief brief, TemperPlan plan, Aim aim, StepDraft step) {
        new PlateClock(brief, plan, aim, step).write();
    }

    private void write() {
        Answer<PullWindow> likely = window(Pace.LIKELY);
        likely.findings().stream()
                .map(PlateClock::softened)
                .filter(f -> likely.value().isEmpty() || likely.findings().contains(f))
                .forEach(step::finding);
        likely.value().ifPresent(this::tell);
    }

    private Answer<PullWindow> window(Pace pace) {
        double upTo = Practice.plateLongest();
        return Tempering.law(plan.steel())
                .then(law -> PullWindow.of(t -> watch(covered.pulledAfter(t, pace)), goal(law.exchange()), 1, upTo));
    }

    /** As much tempering as the plan's hold gives, between as much as its limits give. */
    private Goal goal(HollomonJaffe exchange) {
        Band heat = plan.heat();
        return new Goal.Hardness(
                aim.band(),
                new Band(
                        Dimension.TEMPERATURE,
                        exchange.parameter(heat.low(), plan.seconds()),
                        exchange.parameter(heat.high(), plan.seconds())),
                exchange.parameter(plan.kelvin(), plan.seconds()));
    }

    private TemperWatch watch(ThermalHistory history) {
        return TemperWatch.of(history, plan.steel(), light(), brief.chromium())
                .value()
                .orElseThrow();
    }

    private Light light() {
        return brief.job().light();
    }

    private void tell(PullWindow window) {
        Estimate pull = pull(window);
        step.then(Phrase.of(
                "Set the plate to {}, lay the part " + lying() + ", cover it with a lid or a piece of ceramic blanket,"
                        + " and take it off {} after laying it on. Warming included, that does the work of {} at {}.",
                Quantity.temperature(covered.plate()),
                Quantity.time(window.best()),
                Quantity.time(plan.seconds()),
                Quantity.temperature(plan.kelvin())));
        step.figure("Take it off after", pull);
        step.figure("Underside by then", covered.after(window.best(), Place.UNDERSIDE));
        step.figure("Top by then", covered.after(window.best(), Place.TOP));
        workingEnd(window);
        bareLevel();
        lasts(window);
        colours(window);
        late(window);
        pictures(window);
    }

    /** Of a stepped pin only the thickest piece lies on the plate; what the end that works has by then is another matter. */
    private void workingEnd(PullWindow window) {
        if (!(brief.shape() instanceof PartShape.SteppedPin pin) || pin.pieces().size() < 2) {
            return;
        }
        covered.endAfter(window.best()).ifPresent(end -> {
            step.figure("Working end by then", end);
            step.reason(
                    "Only the thickest piece lies on the plate: the working end takes its heat through the pin and from the"
                            + " air under the cover, and has {} by then.",
                    Quantity.temperature(end.value()));
        });
    }

    private Estimate pull(PullWindow window) {
        double early = best(Pace.QUICK).orElse(window.best());
        double late = best(Pace.SLOW).orElse(Practice.plateLongest());
        return Estimate.of(
                Dimension.TIME,
                window.best(),
                Math.min(window.best(), early),
                Math.max(window.best(), late),
                PlateHeat.bases());
    }

    private OptionalDouble best(Pace pace) {
        return window(pace).value().map(w -> OptionalDouble.of(w.best())).orElse(OptionalDouble.empty());
    }

    private void bareLevel() {
        Estimate level = bare.after(Practice.plateLongest(), Place.TOP);
        step.figure("Uncovered, it levels off at", level);
        step.reason(
                level.value() < plan.window().low()
                        ? "Uncovered, the part loses as much as it takes up and levels off near {}, short of {}: the"
                                + " cover is not a nicety."
                        : "Uncovered, the part levels off near {}, depending on the air gap under it; covered, it comes"
                                + " near to the plate whatever the gap, and is sure of {}.",
                Quantity.temperature(level.value()),
                Quantity.temperature(plan.kelvin()));
    }

    private void lasts(PullWindow window) {
        if (window.closes().isPresent()) {
            step.reason(
                    "The window is open from {} to {}, the slowest and the fastest place counted, and what goes on"
                            + " while it cools in air.",
                    Quantity.time(window.opens()),
                    Quantity.time(window.closes().getAsDouble()));
        } else {
            step.reason(
                    "The window opens at {} and does not close within {}.",
                    Quantity.time(window.opens()),
                    Quantity.time(Practice.plateLongest()));
        }
    }

    private void colours(PullWindow window) {
        Reading under = reading(window.atBest(), Place.UNDERSIDE);
        Reading top = reading(window.atBest(), Place.TOP);
        under.colour()
                .value()
                .ifPresent(u -> top.colour()
                        .value()
                        .ifPresent(t -> step.reason(
                                "By then the underside is " + name(u) + " and the top " + name(t)
                                        + ". All of it counts as {} at {}.",
                                Quantity.time(top.equivalent().seconds()),
                                Quantity.temperature(top.equivalent().kelvin()))));
    }

    private void late(PullWindow window) {
        Reading then = reading(window.atBest(), Place.UNDERSIDE);
        Reading late = reading(window.late(), Place.UNDERSIDE);
        String seen =
                late.colour().value().map(c -> "; it is then " + name(c) + ".").orElse(".");
        then.hardness()
                .value()
                .ifPresent(h -> late.hardness().value().ifPresent(l -> {
                    double softer = h.value() - l.value();
                    if (softer < Practice.tellableHardness()) {
                        step.reason(
                                "Taken off {} late it is no softer than a file or a tester could tell" + seen,
                                Quantity.time(window.lateness()));
                    } else {
                        step.reason(
                                "Taken off {} late it is {} softer" + seen,
                                Quantity.time(window.lateness()),
                                Quantity.hardness(softer));
                    }
                }));
    }

    private static Reading reading(TemperWatch watch, Place place) {
        return watch.at(place).orElseThrow().last();
    }

    private static String name(ColourReading reading) {
        return reading.colour().name().word();
    }

    private String lying() {
        if (brief.shape() instanceof PartShape.Flat) {
            return "on its broad side";
        }
        return brief.shape() instanceof PartShape.SquareBar ? "on one of its sides" : "on its side";
    }

    private static Finding softened(Finding finding) {
        return finding instanceof Finding.Stop stop
                ? new Finding.Caution(stop.what(), stop.why(), stop.remedy())
                : finding;
    }

    private void pictures(PullWindow window) {
        step.picture(clock(window));
        double[] moments = {window.best() / 16, window.best() / 4, window.best()};
        step.picture(SectionPicture.of(
                brief.shape(),
                Phrase.of("The section while it warms on a plate of {}", Quantity.temperature(covered.plate())),
                moments,
                covered));
    }

    private Picture clock(PullWindow window) {
        double end = Math.min(
                Practice.plateLongest(),
                Math.min(window.closes().orElse(window.best()), 2 * window.best()) + window.best() / 4);
        Band pull = Band.between(Dimension.TIME, window.opens(), window.closes().orElse(end));
        return new Picture.HeatClock(
                Phrase.of("Temperature on the covered plate of {}", Quantity.temperature(covered.plate())),
                List.of(trace("underside", Place.UNDERSIDE, end), trace("top", Place.TOP, end)),
                Optional.of(plan.window()),
                Optional.of(pull),
                spans(end));
    }

    private Picture.ClockTrace trace(String name, Place place, double end) {
        var likely = covered.left(end, Pace.LIKELY, POINTS).at(place).orElseThrow();
        var slow = covered.left(end, Pace.SLOW, POINTS).at(place).orElseThrow();
        var quick = covered.left(end, Pace.QUICK, POINTS).at(place).orElseThrow();
        List<Picture.ClockPoint> points = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            double k = likely.kelvin(i);
            points.add(new Picture.ClockPoint(
                    likely.second(i), k, Math.min(k, slow.kelvin(i)), Math.max(k, quick.kelvin(i))));
        }
        return new Picture.ClockTrace(name, points);
    }

    private List<Picture.ColourSpan> spans(double end) {
        TemperWatch watch = watch(covered.left(end, Pace.LIKELY, POINTS));
        List<Picture.ColourSpan> spans = new ArrayList<>();
        // each reading stands for half a step to either side
        for (Reading reading : watch.at(Place.UNDERSIDE).orElseThrow().curve(POINTS)) {
            double upTo = reading.seconds() + end / POINTS / 2;
            reading.colour().value().ifPresent(c -> {
                int last = spans.size() - 1;
                String hex = c.colour().hex();
                if (last >= 0 && spans.get(last).name().equals(name(c))) {
                    spans.set(last, new Picture.ColourSpan(spans.get(last).from(), upTo, name(c), hex));
                } else {
                    double from = last >= 0 ? spans.get(last).to() : reading.seconds() - end / POINTS / 2;
                    spans.add(new Picture.ColourSpan(from, upTo, name(c), hex));
                }
            });
        }
        return spans;
    }
}
