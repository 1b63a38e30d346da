package org.strawblue.core.evidence.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.evidence.sample.Weights;

/**
 * The look from which most is to be expected for its effort: spread of the answer now, less its mean spread over all that the
 * look may show.
 *
 * @param observation the look, with one of its answers
 * @param gain expected narrowing of the 80 % interval's half width, in the answer's own unit
 * @param effort against that of one simple look [1]
 */
public record NextLook(Observation observation, double gain, double effort) {

    /** So many readings stand for all that an instrument may show. */
    private static final int READINGS = 16;

    private static final double HALF = org.strawblue.core.estimate.Normal.HALF_OF_80;

    /** A look that could be taken. */
    public record Candidate(Observation observation, double effort) {}

    double worth() {
        return gain / effort;
    }

    /** The candidates, best first. */
    public static List<NextLook> ranked(Judgement judged, double[] answer, List<Candidate> candidates) {
        List<NextLook> ranked = new ArrayList<>();
        for (Candidate candidate : candidates) {
            Clues.of(candidate.observation())
                    .map(clue -> gain(judged, answer, clue))
                    .ifPresent(g -> ranked.add(new NextLook(candidate.observation(), g, candidate.effort())));
        }
        ranked.sort(Comparator.comparingDouble(NextLook::worth).reversed());
        return ranked;
    }

    private static double gain(Judgement judged, double[] answer, Clue clue) {
        Ensemble e = judged.ensemble();
        Weights w = judged.weights();
        double now = spread(answer, w, i -> 1);
        double after = 0;
        if (clue instanceof Choice choice) {
            for (int a = 0; a < choice.answers(e); a++) {
                int look = a;
                after += weighed(answer, w, i -> choice.chance(e, i, look));
            }
        } else if (clue instanceof Measured measured) {
            double[] expected = e.values(i -> measured.expected(e, i));
            for (int k = 0; k < READINGS; k++) {
                double shows = w.quantiles(expected, (k + 1.0 / 2) / READINGS)[0];
                Measured reading = measured.showing(shows);
                after += spread(answer, w, i -> Math.exp(reading.log(e, i))) / READINGS;
            }
        }
        return Math.max(0, now - after) * HALF;
    }

    private interface Factor {
        double of(int draw);
    }

    /** Chance of the look times the spread that is left after it. */
    private static double weighed(double[] answer, Weights w, Factor chance) {
        double sum = 0;
        for (int i = 0; i < answer.length; i++) {
            sum += w.of(i) > 0 && !Double.isNaN(answer[i]) ? w.of(i) * chance.of(i) : 0;
        }
        return sum * spread(answer, w, chance);
    }

    private static double spread(double[] answer, Weights w, Factor factor) {
        double all = 0;
        double mean = 0;
        double square = 0;
        for (int i = 0; i < answer.length; i++) {
            if (w.of(i) > 0 && !Double.isNaN(answer[i])) {
                double share = w.of(i) * factor.of(i);
                all += share;
                mean += share * answer[i];
                square += share * answer[i] * answer[i];
            }
        }
        return all > 0 ? Math.sqrt(Math.max(0, square / all - mean * mean / all / all)) : 0;
    }
}
