package org.strawblue.core.job.plan;

import java.util.List;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.heat.HeatThrough;
import org.strawblue.core.heat.Passing;
import org.strawblue.core.history.Trace;
import org.strawblue.core.job.Picture;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.TemperRun;
import org.strawblue.core.steel.Tempering;

/** The clock of a temper by torch: how fast the colours run, how long there is, what the flame leaves behind. */
final class TorchClock {

    private static final int POINTS = 24;

    private final Brief brief;
    private final TemperPlan plan;
    private final StepDraft step;
    private final Band heat;
    private final List<Passing> passing;

    private TorchClock(Brief brief, TemperPlan plan, StepDraft step) {
        this.brief = brief;
        this.plan = plan;
        this.step = step;
        this.heat = plan.heat();
        this.passing = HeatThrough.passing(
                brief.shape(),
                plan.source(),
                Practice.room(),
                heat.high(),
                heat.high(),
                HeatThrough.Surface.BRIGHT,
                POINTS);
    }

    /** Adds to the step how the flame is led, and what a moment too long costs. */
    static void over(Brief brief, TemperPlan plan, StepDraft step) {
        TorchClock clock = new TorchClock(brief, plan, step);
        if (plan.source() instanceof HeatSource.Torch && clock.passing.size() > POINTS) {
            clock.write();
        }
    }

    private void write() {
        double rate = rate();
        double open = heat.width() / rate;
        step.then(Phrase.of(
                "Warm it slowly, the flame always moving and coming from behind the edge, not on it: held still it gains"
                        + " {} a second here, and the right heat is passed in {}. Take the flame away a shade early, and"
                        + " stop it in water as the colour arrives.",
                Quantity.temperatureDifference(rate),
                Quantity.time(open)));
        step.figure("Flame held on it, hot after", time());
        step.figure("Then the window lasts", window(open));
        step.reason(
                "A hand takes about {} to act; that is {} more in the steady flame.",
                Quantity.time(Practice.reaction()),
                Quantity.temperatureDifference(rate * Practice.reaction()));
        carryOver();
        counts();
        step.picture(picture(open));
    }

    /** Rise of the part in the steady flame at the heat aimed for [K/s]. */
    private double rate() {
        Passing a = passing.get(POINTS - 2);
        Passing b = passing.get(POINTS);
        return (b.kelvin() - a.kelvin()) / (b.seconds() - a.seconds());
    }

    private Estimate time() {
        Passing at = passing.get(POINTS);
        double back = (at.kelvin() - plan.kelvin()) / rate();
        double share = (at.seconds() - back) / at.seconds();
        double slowest = Double.isFinite(at.slowest()) ? at.slowest() : at.seconds() * at.seconds() / at.quickest();
        return Estimate.of(
                Dimension.TIME,
                at.seconds() * share,
                at.quickest() * share,
                slowest * share,
                HeatThrough.bases(plan.source()));
    }

    private Estimate window(double open) {
        Passing at = passing.get(POINTS);
        double slow = Double.isFinite(at.slowest()) ? at.slowest() / at.seconds() : at.seconds() / at.quickest();
        return Estimate.of(
                Dimension.TIME,
                open,
                open * at.quickest() / at.seconds(),
                open * slow,
                HeatThrough.bases(plan.source()));
    }

    /** The flame heats one stretch; what lies beyond is cold, and the thick part behind the edge hotter than the edge. */
    private void carryOver() {
        plan.source()
                .evenLength()
                .filter(l -> l < brief.shape().length())
                .ifPresent(even -> step.reason(
                        "Such a flame heats about {} evenly, less than the part's {}: heat goes on running from there to what is"
                                + " colder, and to the edge, when the flame is gone. Water stops it; air does not.",
                        Quantity.length(even),
                        Quantity.length(brief.shape().length())));
    }

    /** Run up and stopped at once, the heat counts as a few seconds at its hottest. */
    private void counts() {
        Tempering.law(plan.steel()).value().ifPresent(law -> {
            Temper counted = TemperRun.of(law, ramp()).equivalent(ramp().duration());
            double shortest = Tempering.times().low();
            if (counted.seconds() < shortest) {
                step.finding(new Finding.Caution(
                        Phrase.of(
                                "Run up in one go and stopped in water, the heat counts as {} at its hottest: no hardness is"
                                        + " told below {}.",
                                Quantity.time(counted.seconds()),
                                Quantity.time(shortest)),
                        Phrase.of(
                                "The hardness above is that of {} at heat, the flame dabbed on and off; quicker parts come"
                                        + " out harder than any law says, at the same colour.",
                                Quantity.time(plan.seconds())),
                        Phrase.of("Dab the flame so that the colour stands still for that time, or try it with a file"
                                + " before it is put to use.")));
            }
        });
    }

    private Trace ramp() {
        return new Trace(
                passing.stream().mapToDouble(Passing::seconds).toArray(),
                passing.stream().mapToDouble(Passing::kelvin).toArray());
    }

    private Picture picture(double open) {
        Passing last = passing.get(POINTS);
        double from = last.seconds() - open;
        return new Picture.HeatClock(
                Phrase.of("The part in the steady flame of the " + plan.source().name()),
                List.of(Clock.trace("part", passing, last.seconds())),
                java.util.Optional.of(heat),
                java.util.Optional.of(Band.between(Dimension.TIME, Math.max(0, from), last.seconds())),
                List.of());
    }
}
