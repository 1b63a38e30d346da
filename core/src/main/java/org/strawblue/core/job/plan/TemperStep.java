package org.strawblue.core.job.plan;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.history.Trace;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.Stage;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.oxide.ColourReading;
import org.strawblue.core.oxide.FilmColour;
import org.strawblue.core.oxide.FilmColours;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Tempering;
import org.strawblue.core.watch.QuickAndSlow;

/** Writes the step in which a part is tempered. */
final class TemperStep {

    private static final int SWATCHES = 37;

    private final Brief brief;
    private final TemperPlan plan;
    private final Aim aim;
    private final StepDraft step;
    private final Answer<ColourReading> colour;

    private TemperStep(Brief brief, TemperPlan plan, Aim aim) {
        this.brief = brief;
        this.plan = plan;
        this.aim = aim;
        this.step = new StepDraft(Stage.TEMPER, brief.piece().name());
        this.colour =
                FilmColours.standard().after(Trace.hold(plan.kelvin(), plan.secondsInAll()), light(), brief.chromium());
    }

    static StepDraft of(Brief brief, TemperPlan plan, Aim aim) {
        TemperStep writer = new TemperStep(brief, plan, aim);
        writer.lead();
        writer.figures();
        writer.colour();
        writer.reasons();
        writer.warming();
        writer.pictures();
        return writer.step;
    }

    private Light light() {
        return brief.job().light();
    }

    private void lead() {
        String count = plan.times() == 1 ? "" : plan.times() == 2 ? " twice" : " " + plan.times() + " times";
        String in = " " + preposition() + " the " + plan.source().name();
        String seen = colour.value().map(c -> "; look for " + range(c) + ".").orElse("; do not go by the colour.");
        step.lead(
                "Temper" + count + in + " at {} for {}, best {}" + seen,
                plan.heat(),
                Quantity.time(plan.seconds()),
                Quantity.temperature(plan.kelvin()));
        step.hazards(plan.source().traits().hazard(), "sharp-hot", "fumes");
    }

    private String preposition() {
        if (plan.source() instanceof HeatSource.HotPlate) {
            return "on";
        }
        return plan.source() instanceof HeatSource.Torch ? "with" : "in";
    }

    private void figures() {
        step.figure("Hardness to expect", plan.hardness());
        step.figure("Chance of the wanted hardness", Chances.within(plan.hardness(), aim.band()));
        step.reasons(List.of(aim.reason()));
    }

    private void colour() {
        colour.findings().forEach(f -> step.finding(soften(f)));
        colour.value().ifPresent(c -> step.figure("Oxide film", c.thickness()));
        colour.value().ifPresent(c -> {
            FilmColours films = FilmColours.standard();
            films.after(Trace.hold(plan.kelvin(), films.chartSeconds()), light(), brief.chromium())
                    .value()
                    .filter(chart -> chart.colour().name() != c.colour().name())
                    .ifPresent(chart -> step.reason(
                            "At the few minutes of a printed chart, {} would show only "
                                    + chart.colour().name().word() + "; after {} it is "
                                    + c.colour().name().word()
                                    + ". A chart colour waited for here would mean a different temperature.",
                            Quantity.temperature(plan.kelvin()),
                            Quantity.time(plan.secondsInAll())));
        });
    }

    /** That a colour cannot be told does not stop the temper. */
    private static Finding soften(Finding finding) {
        return finding instanceof Finding.Stop stop
                ? new Finding.Caution(stop.what(), stop.why(), stop.remedy())
                : finding;
    }

    private void reasons() {
        step.reason(
                "The metal may be {} off either way "
                        + plan.error()
                                .byInstrument()
                                .map(i -> "even by the " + i.words())
                                .orElse("by the setting of the " + plan.source().name() + " alone")
                        + "; that alone moves the hardness over {}.",
                Quantity.temperatureDifference(plan.error().half()),
                plan.errorCost());
        quickAgainstThis();
        if (plan.times() > 1) {
            step.reason(
                    "Let it cool to the hand between tempers: what was still soft austenite hardens then, and the next"
                            + " temper takes the glass out of it.");
        }
    }

    /** The colour of this temper, run up in a torch's time, is another temperature and perhaps another hardness. */
    private void quickAgainstThis() {
        colour.value()
                .ifPresent(c -> QuickAndSlow.of(
                                plan.steel(),
                                c.colour().name(),
                                light(),
                                brief.chromium(),
                                Practice.quickColour(),
                                plan.secondsInAll())
                        .value()
                        .filter(both -> both.quick().seconds() < both.slow().seconds())
                        .ifPresent(this::compared));
    }

    private void compared(QuickAndSlow both) {
        both.harder()
                .ifPresent(harder -> step.reason(
                        "The same " + both.colour().word()
                                + " run up in {} comes only at {}; against {} here the hardness may differ by {}.",
                        Quantity.time(both.quick().seconds()),
                        Quantity.temperature(both.quick().kelvin().value()),
                        Quantity.temperature(both.slow().kelvin().value()),
                        harder.band()));
    }

    /** What the heat does before the clock of the temper starts. */
    private void warming() {
        if (plan.source() instanceof HeatSource.HotPlate) {
            if (plan.times() == 1) {
                PlateClock.over(brief, plan, aim, step);
            }
            return;
        }
        if (plan.source() instanceof HeatSource.Oven || plan.source() instanceof HeatSource.Kiln) {
            OvenClock.over(brief, plan, step);
        } else if (plan.source() instanceof HeatSource.Torch) {
            TorchClock.over(brief, plan, step);
        } else {
            step.reason(
                    "Start the clock when the part itself is hot, not what lies round it: bright steel warms slowly.");
        }
    }

    private void pictures() {
        if (colour.value().isPresent()) {
            step.picture(ribbon());
        }
        Tempering.curve(brief.steel(), plan.secondsInAll())
                .value()
                .ifPresent(points -> step.picture(new Picture.HardnessCurve(
                        Phrase.of(
                                "Hardness of " + brief.grade().name() + " after {} at each temperature",
                                Quantity.time(plan.secondsInAll())),
                        points.stream()
                                .filter(p -> p.kelvin() <= upTo())
                                .map(p -> new Picture.CurvePoint(
                                        p.kelvin(),
                                        p.hardness().value(),
                                        p.hardness().low(),
                                        p.hardness().high()))
                                .toList(),
                        Optional.of(aim.band()),
                        Optional.of(plan.heat()),
                        plan.secondsInAll())));
    }

    /** The curve is drawn as far as this temper may concern anyone. */
    private double upTo() {
        return Math.max(Practice.curveTo(), plan.window().high() + plan.error().half());
    }

    private Picture ribbon() {
        return new Picture.ColourRibbon(
                Phrase.of("Film colours after {}, by " + light().word(), Quantity.time(plan.secondsInAll())),
                FilmColours.standard()
                        .ribbon(plan.secondsInAll(), light(), Practice.ribbonFrom(), Practice.ribbonTo(), SWATCHES)
                        .stream()
                        .map(r -> new Picture.Swatch(
                                r.kelvin(), r.colour().name().word(), r.colour().hex()))
                        .toList(),
                plan.heat(),
                plan.secondsInAll(),
                light().word());
    }

    /** Past the last blue the film tells nothing more. */
    private static String look(ColourReading c) {
        return c.colour().name() == ColourName.GREY && c.thinner().name() == ColourName.GREY
                ? "; it will be past blue and grey, which tells nothing more."
                : "; look for " + range(c) + ".";
    }

    private static String range(ColourReading c) {
        FilmColour thin = c.thinner();
        FilmColour thick = c.thicker();
        String middle = c.colour().name().word();
        return thin.name() == thick.name()
                ? middle
                : middle + " (between " + thin.name().word() + " and "
                        + thick.name().word() + ")";
    }
}
