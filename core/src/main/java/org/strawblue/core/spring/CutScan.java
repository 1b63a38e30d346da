package org.strawblue.core.spring;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.quantity.Dimension;

/**
 * Of all cuts of one spring that form one new end, the one that keeps every limit of a pocket with most to spare.
 *
 * <p>Cutting leaves wire, diameter and pitch as they are, so rate × working coils, the force that the wire bears and the
 * gap each coil needs are reckoned once, and each cut costs only sums. What is to spare counts in standard deviations
 * of what decides each limit, roughly; the chance itself is reckoned by {@link WorkingProbability}.
 */
final class CutScan {

    private static final double STEP = Figures.PRACTICE.number("cut_step");
    private static final double LEAST_ACTIVE = Figures.PRACTICE.number("least_active");
    private static final double GROUND_FROM = Figures.PRACTICE.si("ground_from", Dimension.LENGTH);
    private static final List<EndType> ALL =
            List.of(EndType.CLOSED_GROUND, EndType.CLOSED, EndType.OPEN_GROUND, EndType.OPEN);
    private static final List<EndType> UNGROUND = List.of(EndType.CLOSED, EndType.OPEN);

    private final MeasuredInputs inputs;
    private final Duty duty;
    private final Coil whole;
    private final double oneCoil;
    private final double atSet;
    private final double gap;
    private final boolean guided;
    private final double rateError;

    CutScan(MeasuredInputs inputs, Duty duty) {
        this.inputs = inputs;
        this.duty = duty;
        whole = inputs.whole();
        oneCoil = whole.rate(duty.moduli()) * whole.active();
        atSet = duty.allowable() / CompressionSpring.STRESS_FACTOR.stress(1, whole.mean(), whole.wire());
        gap = whole.leastGap(duty.moving()) / whole.active();
        guided = duty.guided(whole);
        rateError = rateError();
    }

    /** Relative error of the rate, coils left out [1]. */
    private double rateError() {
        double[] half = inputs.halfWidth();
        double index = whole.index();
        double wire = (4 + 3 / index) * half[MeasuredInputs.WIRE] / whole.wire();
        double outside = 3 * (1 + 1 / index) * half[MeasuredInputs.OUTSIDE] / whole.outside();
        return wire * wire + outside * outside + half[MeasuredInputs.STIFFNESS] * half[MeasuredInputs.STIFFNESS];
    }

    /** The best cut to this new end that keeps every limit. */
    Optional<Cut> best(boolean atFirst, EndType end) {
        Ends ends = atFirst
                ? new Ends(end, whole.ends().second())
                : new Ends(whole.ends().first(), end);
        EndType old = atFirst ? whole.ends().first() : whole.ends().second();
        double least = end.closed() ? STEP : Math.max(STEP, old.inactive());
        double bestSpare = 0;
        double best = -1;
        int from = firstStep(ends, least);
        for (int j = from; ; j++) {
            double off = least + j * STEP;
            double active = whole.total() - off - ends.inactive();
            if (active < LEAST_ACTIVE || free(ends, active) < duty.atRest()) {
                break;
            }
            double spare = spare(ends, active);
            if (spare > bestSpare) {
                bestSpare = spare;
                best = off;
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(new Cut(best, atFirst, end));
    }

    /** Steps that leave it solid at full travel are passed over: fewer coils than these must go. */
    private int firstStep(Ends ends, double least) {
        double d = whole.wire();
        double most = (duty.atFull() - (ends.inactive() + ends.solidWires()) * d) / (d + gap);
        double excess = whole.total() - ends.inactive() - least - most;
        return excess <= 0 ? 0 : (int) Math.floor(excess / STEP);
    }

    private double free(Ends ends, double active) {
        return whole.pitch() * (active + ends.lengthPitches()) + ends.lengthWires() * whole.wire();
    }

    /** Least margin over its deviation; 0 or below where a limit is broken. */
    private double spare(Ends ends, double active) {
        double free = free(ends, active);
        double rate = oneCoil * FewCoils.factor(active) / active;
        double toRest = free - duty.atRest();
        double toFull = free - duty.atFull();
        double clear = duty.atFull() - (active + ends.inactive() + ends.solidWires()) * whole.wire() - active * gap;
        double spare = Math.min(length(toRest), clear / solidError(active));
        if (spare <= 0) {
            return spare;
        }
        double coils = inputs.halfWidth()[MeasuredInputs.COILS] / active;
        double relative = rateError + coils * coils;
        spare = Math.min(
                spare,
                force(rate * toRest, duty.restForce().low(), duty.restForce().high(), toRest, relative));
        double most = Math.min(duty.fullForce().high(), atSet);
        spare = Math.min(spare, force(rate * toFull, duty.fullForce().low(), most, toFull, relative));
        return spare <= 0 ? spare : Math.min(spare, shape(free, active, rate));
    }

    private double shape(double free, double active, double rate) {
        double spare = Double.POSITIVE_INFINITY;
        double half = inputs.halfWidth()[MeasuredInputs.OUTSIDE];
        if (!Double.isInfinite(duty.bore())) {
            double pitchAt = whole.pitch() - (free - duty.atFull()) / active;
            double widest = CompressionSpring.widestAtPitch(whole, duty.moduli(), pitchAt);
            spare = (duty.bore() - widest) / half;
        }
        spare = Math.min(spare, (whole.inside() - duty.rod()) / half);
        if (!guided) {
            spare = Math.min(spare, length(straight(free)));
        }
        return duty.moving() ? Math.min(spare, lasts(free, rate)) : spare;
    }

    private double straight(double free) {
        double longest = Buckling.longestFree(duty.moduli(), whole.mean(), duty.atFull(), duty.seat());
        return longest - free;
    }

    private double lasts(double free, double rate) {
        double one = CompressionSpring.STRESS_FACTOR.stress(1, whole.mean(), whole.wire());
        double amplitude = one * rate * (duty.atRest() - duty.atFull()) / 2;
        double mean = one * rate * (free - duty.atFull()) - amplitude;
        return (Zimmerli.greatestMean(amplitude, duty.strength()) / mean - 1) / Math.sqrt(rateError);
    }

    private double length(double margin) {
        return margin / inputs.halfWidth()[MeasuredInputs.FREE];
    }

    private double solidError(double active) {
        double wire = (active + 2) * inputs.halfWidth()[MeasuredInputs.WIRE];
        double coils = whole.wire() * inputs.halfWidth()[MeasuredInputs.COILS];
        return Math.sqrt(wire * wire + coils * coils);
    }

    private double force(double force, double low, double high, double deflection, double relative) {
        double length = inputs.halfWidth()[MeasuredInputs.FREE] / deflection;
        double error = Math.sqrt(relative + length * length);
        double over = low > 0 ? force / low - 1 : Double.POSITIVE_INFINITY;
        return Math.min(over, high / force - 1) / error;
    }

    /** The new ends that may be formed, the squarest first; no ground one on thin wire. */
    static List<EndType> newEnds(double wire) {
        return wire < GROUND_FROM ? UNGROUND : ALL;
    }
}
