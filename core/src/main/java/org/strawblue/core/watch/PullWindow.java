package org.strawblue.core.watch;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import java.util.function.ToDoubleFunction;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/**
 * When to take a part off the heat: from when its slowest place has enough until its fastest has too much, what goes on after
 * removal counted in.
 *
 * @param opens when the slowest place has enough [s]
 * @param closes when the fastest place has too much [s]; absent where it never does within the time looked at
 * @param best the moment to aim for [s]
 * @param atBest the whole history, taken off then
 * @param late the same, taken off {@code lateness} after the best moment
 * @param lateness [s]
 */
public record PullWindow(
        double opens, OptionalDouble closes, double best, TemperWatch atBest, TemperWatch late, double lateness) {

    /** The search ends where it is as near as this share of the time found ... */
    private static final double NEAR = 1.0 / 1024;

    /** ... or as near as this [s]. */
    private static final double NEAREST = 1.0 / 16;

    /** How long it lasts [s]; none where the places are too far apart to be right together. */
    public OptionalDouble lasts() {
        return closes.isPresent() ? OptionalDouble.of(Math.max(0, closes.getAsDouble() - opens)) : closes;
    }

    /**
     * Looks for the window. Everything a goal measures must grow with the time of removal.
     *
     * @param pulledAt the whole history, removal and cooling included, taken off after a time [s] on the heat
     * @param from shortest time looked at [s], greater than 0
     * @param upTo longest time looked at [s]
     */
    public static Answer<PullWindow> of(DoubleFunction<TemperWatch> pulledAt, Goal goal, double from, double upTo) {
        ToDoubleFunction<TemperWatch> least = w -> least(goal, w);
        ToDoubleFunction<TemperWatch> most = w -> most(goal, w);
        TemperWatch longest = pulledAt.apply(upTo);
        if (least.applyAsDouble(longest) < goal.limits().low()) {
            return Answer.refused(never(longest, goal, upTo));
        }
        double opens = first(
                t -> least.applyAsDouble(pulledAt.apply(t)) >= goal.limits().low(), from, upTo);
        OptionalDouble closes = most.applyAsDouble(longest) > goal.limits().high()
                ? OptionalDouble.of(first(
                        t -> most.applyAsDouble(pulledAt.apply(t))
                                > goal.limits().high(),
                        from,
                        upTo))
                : OptionalDouble.empty();
        double aim = first(t -> middle(goal, pulledAt.apply(t)) >= goal.best(), from, upTo);
        double best = closes.isPresent() && closes.getAsDouble() < opens
                ? (opens + closes.getAsDouble()) / 2
                : Math.max(opens, Math.min(aim, closes.orElse(upTo)));
        double lateness = WatchFigures.late();
        PullWindow window =
                new PullWindow(opens, closes, best, pulledAt.apply(best), pulledAt.apply(best + lateness), lateness);
        return Answer.of(window, window.findings());
    }

    private static double least(Goal goal, TemperWatch watch) {
        return watch.places().values().stream().mapToDouble(goal::of).min().orElseThrow();
    }

    private static double most(Goal goal, TemperWatch watch) {
        return watch.places().values().stream().mapToDouble(goal::of).max().orElseThrow();
    }

    private static double middle(Goal goal, TemperWatch watch) {
        return (least(goal, watch) + most(goal, watch)) / 2;
    }

    /** The first time of the range at which something that stays true is true; the end of the range where it never is. */
    private static double first(DoublePredicate true_, double from, double upTo) {
        if (true_.test(from)) {
            return from;
        }
        double before = from;
        double after = upTo;
        while (after - before > Math.max(NEAREST, NEAR * after)) {
            double half = (before + after) / 2;
            if (true_.test(half)) {
                after = half;
            } else {
                before = half;
            }
        }
        return after;
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        closes.ifPresent(c -> {
            if (c < opens) {
                findings.add(uneven(c));
            } else if (c - opens < 2 * lateness) {
                findings.add(brief(c - opens));
            }
        });
        return findings;
    }

    private Finding uneven(double close) {
        return new Finding.Caution(
                Phrase.of(
                        "No moment suits the whole part: its fastest place has enough {} before its slowest",
                        Quantity.time(opens - close)),
                Phrase.of("It heats faster than heat spreads through it."),
                Phrase.of("Heat it more slowly, turn it over, or let the edge that works decide."));
    }

    private static Finding brief(double seconds) {
        return new Finding.Caution(
                Phrase.of("The window lasts only {}", Quantity.time(seconds)),
                Phrase.of("A hand that waits to be sure is late by then."),
                Phrase.of("Heat it more slowly: set the heat lower, or take it away and bring it back."));
    }

    private static Finding never(TemperWatch longest, Goal goal, double upTo) {
        PlaceWatch slowest = longest.places().values().stream()
                .min(java.util.Comparator.comparingDouble(goal::of))
                .orElseThrow();
        return new Finding.Stop(
                Phrase.of(
                        "Not enough even after {}: the coolest place has had {} at most",
                        Quantity.time(upTo),
                        Quantity.temperature(slowest.trace().peak())),
                Phrase.of("A part that loses as much heat as it takes up levels off."),
                Phrase.of("Cover it, set the heat higher, or wait longer."));
    }
}
