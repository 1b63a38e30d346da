package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.heat.HeatThrough;
import org.strawblue.core.heat.Passing;
import org.strawblue.core.job.Picture;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.HollomonJaffe;
import org.strawblue.core.steel.Tempering;

/** The clock of a temper in an oven or kiln: when the part is hot, when to take it out, what the oven's swing does to it. */
final class OvenClock {

    /** How far the picture goes on after the part is out, over the time until then [1]. */
    private static final double SHOWN = 1.15;

    private static final int POINTS = 16;
    private static final int TAIL = 4;

    private final Brief brief;
    private final TemperPlan plan;
    private final StepDraft step;
    private final List<Passing> bright;
    private final List<Passing> black;

    private OvenClock(Brief brief, TemperPlan plan, StepDraft step) {
        this.brief = brief;
        this.plan = plan;
        this.step = step;
        this.bright = passing(HeatThrough.Surface.BRIGHT);
        this.black = passing(HeatThrough.Surface.OXIDISED);
    }

    /** Adds to the step when its clock starts and ends. */
    static void over(Brief brief, TemperPlan plan, StepDraft step) {
        OvenClock clock = new OvenClock(brief, plan, step);
        if (!clock.bright.isEmpty() && !clock.black.isEmpty()) {
            clock.write();
        }
    }

    private List<Passing> passing(HeatThrough.Surface surface) {
        return passing(surface, HeatThrough.hot(plan.source(), plan.kelvin()));
    }

    private List<Passing> passing(HeatThrough.Surface surface, double to) {
        return HeatThrough.passing(brief.shape(), plan.source(), Practice.room(), to, plan.kelvin(), surface, POINTS);
    }

    /** For drawing, almost as far as the oven's own heat. */
    private List<Passing> whole(HeatThrough.Surface surface) {
        double hot = HeatThrough.hot(plan.source(), plan.kelvin());
        List<Passing> first = passing(surface, hot);
        List<Passing> whole = new ArrayList<>(first);
        for (int i = 1; i <= TAIL; i++) {
            // each further step halves what is left
            double to = plan.kelvin() - (plan.kelvin() - hot) / Math.pow(2, i);
            List<Passing> further = passing(surface, to);
            if (!further.isEmpty()) {
                whole.add(further.get(POINTS));
            }
        }
        return whole;
    }

    private void write() {
        Passing hot = bright.get(POINTS);
        Passing hotBlack = black.get(POINTS);
        step.then(Phrase.of(
                "Lay it in when the " + plan.source().name() + " has its heat. Bright, the part is there only {} later:"
                        + " start the {} then, and take it out {} after putting it in. Black from the fire, it is there"
                        + " after {}.",
                Quantity.time(hot.seconds()),
                Quantity.time(plan.seconds()),
                Quantity.time(hot.seconds() + plan.seconds()),
                Quantity.time(hotBlack.seconds())));
        step.figure("Bright, it is hot after", time(hot));
        step.figure("Black, it is hot after", time(hotBlack));
        reasons(hot);
        step.picture(picture(hot));
    }

    private Estimate time(Passing p) {
        double slowest = Double.isFinite(p.slowest()) ? p.slowest() : p.seconds() * p.seconds() / p.quickest();
        return Estimate.of(Dimension.TIME, p.seconds(), p.quickest(), slowest, HeatThrough.bases(plan.source()));
    }

    private void reasons(Passing hot) {
        if (hot.seconds() > plan.seconds() / 2) {
            step.reason(
                    "{} by the kitchen clock, counted from the door, would leave a bright part {} at heat: what the rest"
                            + " warms it counts for little.",
                    Quantity.time(plan.seconds()),
                    Quantity.time(Math.max(0, plan.seconds() - hot.seconds())));
        }
        swing();
        late();
    }

    /** A swing of amplitude A and period P reaches a part of time constant τ as A/√(1 + (2πτ/P)²). */
    private void swing() {
        double swing = plan.source().traits().swing();
        double period = plan.source().traits().period();
        if (swing <= 0 || period <= 0) {
            return;
        }
        double part = 2 * Math.PI * lag() / period;
        step.reason(
                "Such an oven swings {} to either side every {}; the part follows it by {} only.",
                Quantity.temperatureDifference(swing),
                Quantity.time(period),
                Quantity.temperatureDifference(swing / Math.sqrt(1 + part * part)));
    }

    /** Time constant near the end [s]: how long the last of its way takes to be gone through e-fold. */
    private double lag() {
        Passing a = bright.get(POINTS / 2);
        Passing b = bright.get(POINTS);
        double from = plan.kelvin() - a.kelvin();
        double to = plan.kelvin() - b.kelvin();
        return to > 0 && from > to ? (b.seconds() - a.seconds()) / Math.log(from / to) : b.seconds();
    }

    private void late() {
        exchange().ifPresent(law -> {
            Band time = times(law);
            step.reason(
                    "At {} anything from {} at heat is expected to give the wanted hardness: the minute does not matter,"
                            + " the temperature does.",
                    Quantity.temperature(plan.kelvin()),
                    time);
        });
    }

    private Optional<HollomonJaffe> exchange() {
        return plan.window().width() > 0
                ? Tempering.law(plan.steel()).value().map(l -> l.exchange())
                : Optional.empty();
    }

    /** Times at heat that soften as much as the ends of the window do in the planned time. */
    private Band times(HollomonJaffe law) {
        double least = law.seconds(law.parameter(plan.window().low(), plan.seconds()), plan.kelvin());
        double most = law.seconds(law.parameter(plan.window().high(), plan.seconds()), plan.kelvin());
        return Band.between(Dimension.TIME, least, Math.min(most, Practice.ovenLongest()));
    }

    private Picture picture(Passing hot) {
        double out = hot.seconds() + plan.seconds();
        double end = out * SHOWN;
        Band pull = exchange()
                .map(this::times)
                .map(t -> Band.between(
                        Dimension.TIME,
                        Math.min(out, hot.seconds() + t.low()),
                        Math.min(end, Math.max(out, hot.seconds() + t.high()))))
                .orElse(Band.between(Dimension.TIME, out, out));
        return new Picture.HeatClock(
                Phrase.of("The part in the " + plan.source().name() + " at {}", Quantity.temperature(plan.kelvin())),
                List.of(
                        Clock.trace("bright", whole(HeatThrough.Surface.BRIGHT), end),
                        Clock.trace("black", whole(HeatThrough.Surface.OXIDISED), end)),
                Optional.of(plan.window()),
                Optional.of(pull),
                List.of());
    }
}
