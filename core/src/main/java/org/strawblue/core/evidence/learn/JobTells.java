package org.strawblue.core.evidence.learn;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.evidence.sample.Distribution;
import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.evidence.sample.Weights;

/**
 * What one judged job tells of the things it was done with. With z the influence in standard deviations of its belief before, m and
 * v its mean and variance in the light of the evidence: the evidence alone is the bell of precision 1/v − 1 about m/v over that precision.
 * So the belief before does not count twice.
 */
public final class JobTells {

    private JobTells() {}

    /** Of every influence that belongs to a thing and of which the evidence told something. */
    public static Map<Influence, Told> of(Ensemble ensemble, Weights weights, String from) {
        Map<Influence, Told> all = new EnumMap<>(Influence.class);
        for (Influence influence : Influence.values()) {
            if (ShopKnowledge.learnable(influence)) {
                of(ensemble, weights, influence, from).ifPresent(t -> all.put(influence, t));
            }
        }
        return all;
    }

    private static Optional<Told> of(Ensemble ensemble, Weights weights, Influence influence, String from) {
        Distribution before = ensemble.priors().of(influence);
        if (before.low() == before.high()) {
            return Optional.empty();
        }
        double[] z = ensemble.values(i -> before.score(ensemble.influence(influence, i)));
        double mean = weights.mean(z);
        double[] squares = new double[z.length];
        for (int i = 0; i < z.length; i++) {
            squares[i] = (z[i] - mean) * (z[i] - mean);
        }
        double variance = weights.mean(squares);
        double most = Figures.number("told-below");
        return variance > 0 && variance < most * most
                ? Optional.of(alone(before, mean, variance, from))
                : Optional.empty();
    }

    private static Told alone(Distribution before, double mean, double variance, String from) {
        double precision = 1 / variance - 1;
        double furthest = Figures.number("furthest");
        double at = Math.max(-furthest, Math.min(furthest, mean / variance / precision));
        double half = Normal.HALF_OF_80 / Math.sqrt(precision);
        return new Told(before.at(at), before.at(at - half), before.at(at + half), from);
    }
}
