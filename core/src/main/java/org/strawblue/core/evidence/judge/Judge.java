package org.strawblue.core.evidence.judge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.evidence.sample.Weights;
import org.strawblue.core.heat.course.Reduced;
import org.strawblue.core.history.Place;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;

/**
 * Weighs what was seen: P(history | seen) ∝ P(history) Π P(seen | history), over an ensemble of histories.
 *
 * <p>Where a look does not fit the rest, the interval reaches over what is told without any one of them: a conflict is not
 * averaged away. The same look at the same place within a minute counts once.
 */
public final class Judge {

    private static final double ENOUGH = Looks.number("enough");
    private static final double CONFLICT = Looks.number("conflict");
    private static final double SAME = Looks.ALL.si("same-look", Dimension.TIME);
    private static final int ROUNDS = 5;

    /** A few thousand histories tell no smaller chance than this [1]. */
    private static final double LEAST_TOLD = 1e-3;

    private final List<Observation> all;
    private final List<Observation> counted = new ArrayList<>();
    private final List<Clue> clues = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private Ensemble ensemble;
    private double[][] logs = {};

    private Judge(Ensemble drawn, List<Observation> all) {
        this.ensemble = drawn;
        this.all = all;
    }

    public static Judgement of(Situation situation, List<Observation> seen) {
        return of(draw(situation, seen), seen);
    }

    /** Histories for a situation, exact at the times of what was seen. */
    public static Ensemble draw(Situation situation, List<Observation> seen) {
        double end = situation.course().duration();
        double[] asked = seen.stream()
                .filter(o -> o.seen().seconds().isPresent())
                .mapToDouble(o -> Math.max(0, Math.min(o.seen().seconds().getAsDouble(), end)))
                .distinct()
                .toArray();
        return Ensemble.draw(
                situation.course(),
                situation.steel(),
                situation.priors(),
                situation.histories(),
                situation.seed(),
                asked);
    }

    /** Weighs histories already drawn, so that one more look costs a moment only. */
    public static Judgement of(Ensemble drawn, List<Observation> seen) {
        return new Judge(drawn, seen).judged();
    }

    private Judgement judged() {
        findings.addAll(Reduced.findings(ensemble.course()));
        Estimate before = peak(ensemble, ensemble.weights());
        all.forEach(this::count);
        if (!clues.isEmpty()) {
            ensemble = ensemble.refined(this::together, ENOUGH, ROUNDS);
        }
        weigh();
        Weights weights = weights(-1);
        List<Worth> worth = worth(weights);
        List<Worth> odd = worth.stream()
                .filter(w -> w.counted() && counted.size() > 1 && w.surprise() < CONFLICT)
                .toList();
        say(odd, weights);
        return new Judgement(
                over(Dimension.TEMPERATURE, peaks(), weights, odd, ensemble.bases()),
                before,
                over(Dimension.TIME, holds(), weights, odd, ensemble.bases()),
                hardness(weights, odd),
                over(Dimension.LENGTH, films(), weights, odd, ensemble.bases()),
                worth,
                odd,
                findings,
                ensemble,
                weights);
    }

    private void count(Observation seen) {
        if (counted.stream().anyMatch(o -> same(o, seen))) {
            findings.add(new Finding.Note(
                    Phrase.of("The same look at the same place is counted once."),
                    Phrase.of("What spoils a look spoils its repetition as well."),
                    Phrase.of("Use another crayon, another file or another place to learn more.")));
            return;
        }
        Optional<Clue> clue = Clues.of(seen);
        if (clue.isEmpty()) {
            findings.add(new Finding.Note(
                    Phrase.of("Whether it fits tells nothing of heat or hardness."),
                    Phrase.of("It is kept with the rest."),
                    Phrase.of("")));
            return;
        }
        if (clue.get() instanceof Measured measured && !measured.tells(ensemble)) {
            findings.add(new Finding.Note(
                    Phrase.of(Described.of(seen) + " tells nothing here."),
                    Phrase.of("What it measures is no part of this heat, or of a steel that is not known."),
                    Phrase.of("Say what heat it was and which steel, if you know.")));
            return;
        }
        counted.add(seen);
        clues.add(clue.get());
    }

    /** The same thing seen again soon, or at no noted time. */
    private static boolean same(Observation a, Observation b) {
        if (a.getClass() != b.getClass() || a.seen().place() != b.seen().place()) {
            return false;
        }
        boolean soon = a.seen().seconds().isEmpty()
                || b.seen().seconds().isEmpty()
                || Math.abs(a.seen().seconds().getAsDouble()
                                - b.seen().seconds().getAsDouble())
                        <= SAME;
        return soon && Repeats.alike(a, b);
    }

    private double together(Ensemble e, int draw) {
        double sum = 0;
        for (Clue clue : clues) {
            sum += clue.log(e, draw);
        }
        return sum;
    }

    private void weigh() {
        logs = new double[clues.size()][];
        for (int c = 0; c < clues.size(); c++) {
            Clue clue = clues.get(c);
            logs[c] = IntStream.range(0, ensemble.size())
                    .parallel()
                    .mapToDouble(i -> clue.log(ensemble, i))
                    .toArray();
        }
    }

    /** What each history counts by all looks but one; by all where that is −1. */
    private Weights weights(int without) {
        double[] sum = new double[ensemble.size()];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = ensemble.logPrior(i);
            for (int c = 0; c < logs.length; c++) {
                sum[i] += c == without ? 0 : logs[c][i];
            }
        }
        return Weights.of(sum);
    }

    private List<Worth> worth(Weights weights) {
        List<Worth> worth = new ArrayList<>();
        for (Observation seen : all) {
            int c = indexOf(seen);
            if (c < 0) {
                worth.add(new Worth(seen, peak(ensemble, weights), 0, 1, false));
            } else {
                Weights others = weights(c);
                worth.add(new Worth(
                        seen, peak(ensemble, others), bits(weights, others), surprise(clues.get(c), others), true));
            }
        }
        return worth;
    }

    /** By identity: of two looks alike the first counts. */
    private int indexOf(Observation seen) {
        for (int c = 0; c < counted.size(); c++) {
            if (counted.get(c) == seen) {
                return c;
            }
        }
        return -1;
    }

    /** Σ w log₂(w/w'): by how much the look moved the belief. */
    private static double bits(Weights with, Weights without) {
        double sum = 0;
        for (int i = 0; i < with.size(); i++) {
            if (with.of(i) > 0 && without.of(i) > 0) {
                sum += with.of(i) * Math.log(with.of(i) / without.of(i));
            }
        }
        return Math.max(0, sum / Math.log(2));
    }

    /** Twice the smaller chance of something as low, or as high, going by the others. */
    private double surprise(Clue clue, Weights others) {
        double low = 0;
        double high = 0;
        for (int i = 0; i < others.size(); i++) {
            if (others.of(i) > 0) {
                low += others.of(i) * clue.atMost(ensemble, i);
                high += others.of(i) * clue.atLeast(ensemble, i);
            }
        }
        return Math.min(1, 2 * Math.min(low, high));
    }

    private void say(List<Worth> odd, Weights weights) {
        for (Worth w : odd) {
            findings.add(
                    new Finding.Caution(
                            Phrase.of(
                                    Described.of(w.observation())
                                            + " does not fit the rest: less than one chance in {}.",
                                    Quantity.number(Math.floor(1 / Math.max(w.surprise(), LEAST_TOLD)))),
                            Phrase.of(
                                    "Without it the peak would be {} to {}.",
                                    Quantity.temperature(w.without().low()),
                                    Quantity.temperature(w.without().high())),
                            Phrase.of(
                                    "Look again by another means before you believe either; the interval told reaches over both.")));
        }
        if (weights.effective() < ENOUGH / 4 && !clues.isEmpty()) {
            findings.add(new Finding.Caution(
                    Phrase.of("What was seen is nearly impossible in every heat that was thought possible."),
                    Phrase.of("Too few histories are left to tell an interval by."),
                    Phrase.of("Check the course that is stated: time, source and its temperature.")));
        }
    }

    private static Estimate peak(Ensemble ensemble, Weights weights) {
        return weights.estimate(
                Dimension.TEMPERATURE, ensemble.values(i -> ensemble.peak(Place.TOP, i)), ensemble.bases());
    }

    private double[] peaks() {
        return ensemble.values(i -> ensemble.peak(Place.TOP, i));
    }

    private double[] holds() {
        return ensemble.values(i -> ensemble.seconds(Place.TOP, i));
    }

    private double[] films() {
        return ensemble.values(i -> ensemble.film(Place.TOP, ensemble.duration(), i));
    }

    private Optional<Estimate> hardness(Weights weights, List<Worth> odd) {
        double[] hrc = ensemble.values(i -> ensemble.hardness(Place.TOP, ensemble.duration(), i));
        return Double.isNaN(weights.quantiles(hrc, 0.5)[0])
                ? Optional.empty()
                : Optional.of(over(Dimension.HARDNESS, hrc, weights, odd, ensemble.hardnessBases()));
    }

    /** With all that was seen; where some of it does not fit, over what is told without any one look: each may be the wrong one. */
    private Estimate over(Dimension dimension, double[] v, Weights weights, List<Worth> odd, Collection<Basis> rests) {
        TreeSet<Basis> bases = new TreeSet<>(rests);
        if (!clues.isEmpty()) {
            bases.add(Looks.ALL.basis("how looks are weighed", "lapse"));
        }
        Estimate told = weights.estimate(dimension, v, bases);
        double low = told.low();
        double high = told.high();
        for (int c = 0; c < logs.length && !odd.isEmpty(); c++) {
            Estimate without = weights(c).estimate(dimension, v, bases);
            low = Math.min(low, without.low());
            high = Math.max(high, without.high());
        }
        return Estimate.of(dimension, told.value(), low, high, bases);
    }
}
