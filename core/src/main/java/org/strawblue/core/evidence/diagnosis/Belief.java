package org.strawblue.core.evidence.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.SplittableRandom;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/**
 * P(cause | seen) ∝ P(cause) Π P(seen | cause): what is seen taken as independent once the cause is given.
 *
 * <p>Intervals: the same with every figure off by chance, its logarithm by a bell; they tell how far the answer leans on figures
 * that nobody has measured.
 */
final class Belief {

    private static final int DRAWS = 600;

    /** One thing that weighs: by how much for each cause, and the spread of its logarithm. */
    private record Weight(double[] likelihood, double spread) {}

    private final double[] shares;
    private final List<Weight> weights = new ArrayList<>();

    Belief(double[] shares) {
        this.shares = shares.clone();
    }

    void add(double[] likelihood, double spread) {
        weights.add(new Weight(likelihood.clone(), spread));
    }

    /** Chance of each cause. */
    double[] chances() {
        return without(-1);
    }

    /** The same, one of what was added left out. */
    double[] without(int left) {
        double[] logs = Arrays.stream(shares).map(Math::log).toArray();
        for (int w = 0; w < weights.size(); w++) {
            for (int c = 0; c < logs.length && w != left; c++) {
                logs[c] += Math.log(weights.get(w).likelihood()[c]);
            }
        }
        return normal(logs);
    }

    /** Chance of what was added as number {@code w}, going by all the rest. */
    double expected(int w) {
        return dot(without(w), weights.get(w).likelihood());
    }

    /** Chances with their 80 % intervals. */
    List<Estimate> estimates(double shareSpread, Collection<Basis> bases) {
        double[] middle = chances();
        double[][] drawn = new double[middle.length][DRAWS];
        SplittableRandom random = new SplittableRandom(1);
        for (int d = 0; d < DRAWS; d++) {
            double[] one = drawn(shareSpread, random);
            for (int c = 0; c < one.length; c++) {
                drawn[c][d] = one[c];
            }
        }
        List<Estimate> estimates = new ArrayList<>();
        for (int c = 0; c < middle.length; c++) {
            Arrays.sort(drawn[c]);
            estimates.add(Estimate.of(
                    Dimension.FRACTION,
                    middle[c],
                    Math.min(middle[c], drawn[c][DRAWS / 10]),
                    Math.max(middle[c], drawn[c][DRAWS - 1 - DRAWS / 10]),
                    bases));
        }
        return estimates;
    }

    private double[] drawn(double shareSpread, SplittableRandom random) {
        double[] logs = new double[shares.length];
        for (int c = 0; c < logs.length; c++) {
            logs[c] = Math.log(shares[c]) + shareSpread * bell(random);
            for (Weight w : weights) {
                logs[c] += Math.log(w.likelihood()[c]) + w.spread() * bell(random);
            }
        }
        return normal(logs);
    }

    private static double bell(SplittableRandom random) {
        return Normal.quantile(random.nextDouble(Double.MIN_NORMAL, 1));
    }

    /** Information [bit] to be expected of a clue: entropy now less its mean over the answers. */
    double gain(double[][] table) {
        double[] now = chances();
        double gain = entropy(now);
        for (double[] answer : table) {
            double chance = dot(now, answer);
            if (chance > 0) {
                double[] then = new double[now.length];
                for (int c = 0; c < then.length; c++) {
                    then[c] = now[c] * answer[c] / chance;
                }
                gain -= chance * entropy(then);
            }
        }
        return Math.max(0, gain);
    }

    private static double entropy(double[] chances) {
        return Arrays.stream(chances)
                .filter(p -> p > 0)
                .map(p -> -p * Math.log(p) / Math.log(2))
                .sum();
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int c = 0; c < a.length; c++) {
            sum += a[c] * b[c];
        }
        return sum;
    }

    private static double[] normal(double[] logs) {
        double most = Arrays.stream(logs).max().orElse(0);
        double[] shares = Arrays.stream(logs).map(l -> Math.exp(l - most)).toArray();
        double all = Arrays.stream(shares).sum();
        return Arrays.stream(shares).map(s -> s / all).toArray();
    }
}
