package org.strawblue.core.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;
import org.strawblue.core.steel.Grade;

/**
 * y = m + s + δ + ε: growth of one size as the steel's mean, the shop's own shift, the bar's own shift and the part's.
 *
 * <p>m what is known of the steel [1], S its standard deviation; variances S²(1 − w)φ for s, which all parts of the shop
 * share, S²(1 − w)(1 − φ) for δ, which parts of one steel share, S²w for ε; each reading's error is added. w is not known:
 * the answers for a few w are weighed by how likely each makes the log. Holes learn from holes, all other sizes from each
 * other. Without a log the answer is the steel's own interval. Split of the variance: assumed, {@code practice.csv}.
 */
public final class GrowthLearning {

    private static final double[] PART_SHARES = {
        Figures.ALL.number("growth_part_low"), Figures.ALL.number("growth_part"), Figures.ALL.number("growth_part_high")
    };
    private static final double SHOP = Figures.ALL.number("growth_shop");
    private static final double MOST = Figures.ALL.number("most_growth");

    private final Estimate prior;
    private final double deviation;
    private final List<LoggedGrowth> log;

    private GrowthLearning(Estimate prior, List<LoggedGrowth> log) {
        this.prior = prior;
        this.deviation = deviation(prior);
        this.log = log;
    }

    /** Growth [1] of a size of this kind from before hardening to after tempering, by what earlier parts did. */
    public static Answer<Estimate> share(Grade grade, Feature.Kind kind, List<LoggedGrowth> earlier) {
        List<Finding> findings = new ArrayList<>();
        List<LoggedGrowth> log = new ArrayList<>();
        for (LoggedGrowth part : earlier) {
            if (part.bore() != (kind == Feature.Kind.BORE)) {
                continue;
            }
            if (Math.abs(part.share()) > MOST) {
                findings.add(leftOut(part));
            } else {
                log.add(part);
            }
        }
        Estimate prior = SizeChange.share(kind, SizeChange.asQuenched(grade));
        return Answer.of(log.isEmpty() ? prior : new GrowthLearning(prior, log).learned(grade, kind), findings);
    }

    private Estimate learned(Grade grade, Feature.Kind kind) {
        double[] mean = new double[PART_SHARES.length];
        double[] sd = new double[PART_SHARES.length];
        double[] weight = new double[PART_SHARES.length];
        for (int i = 0; i < PART_SHARES.length; i++) {
            predict(grade, kind, i, mean, sd, weight);
        }
        TreeSet<Basis> bases = new TreeSet<>(prior.bases());
        bases.add(Figures.ALL.basis("growth_part"));
        return Estimate.of(
                Dimension.FRACTION,
                quantile(mean, sd, weight, 0.5),
                quantile(mean, sd, weight, 0.1),
                quantile(mean, sd, weight, 0.9),
                bases);
    }

    /** Mean and deviation of the next part for one split of the variance, and the log's likelihood. */
    private void predict(Grade grade, Feature.Kind kind, int i, double[] mean, double[] sd, double[] weight) {
        double w = PART_SHARES[i];
        int n = log.size();
        RealMatrix k = MatrixUtils.createRealMatrix(n, n);
        RealVector with = new ArrayRealVector(n);
        RealVector miss = new ArrayRealVector(n);
        for (int a = 0; a < n; a++) {
            LoggedGrowth part = log.get(a);
            double own = own(part);
            for (int b = 0; b < n; b++) {
                k.setEntry(a, b, shared(part.grade(), log.get(b).grade(), own, own(log.get(b)), w));
            }
            k.addToEntry(a, a, own * own * w + part.readingVariance());
            with.setEntry(a, shared(part.grade(), grade, own, deviation, w));
            miss.setEntry(
                    a,
                    part.share()
                            - SizeChange.share(kind, SizeChange.asQuenched(part.grade()))
                                    .value());
        }
        // the growths are of the order 1e-3: the usual threshold of the decomposition would find no number there
        CholeskyDecomposition cholesky = new CholeskyDecomposition(k, 1e-9, 0);
        RealVector solved = cholesky.getSolver().solve(miss);
        mean[i] = prior.value() + with.dotProduct(solved);
        double left = with.dotProduct(cholesky.getSolver().solve(with));
        sd[i] = Math.sqrt(Math.max(0, deviation * deviation - left));
        weight[i] = Math.exp(-miss.dotProduct(solved) / 2) / Math.sqrt(scaledDeterminant(cholesky, n));
    }

    /** Determinant with each row scaled by the prior's deviation, so that it stays a number of ordinary size. */
    private double scaledDeterminant(CholeskyDecomposition cholesky, int n) {
        double product = 1;
        for (int a = 0; a < n; a++) {
            double root = cholesky.getL().getEntry(a, a) / deviation;
            product *= root * root;
        }
        return product;
    }

    private static double shared(Grade one, Grade other, double s1, double s2, double w) {
        boolean same = one.name().equals(other.name());
        return s1 * s2 * (1 - w) * (same ? 1 : SHOP);
    }

    private static double own(LoggedGrowth part) {
        return deviation(SizeChange.share(part.kind(), SizeChange.asQuenched(part.grade())));
    }

    private static double deviation(Estimate estimate) {
        return (estimate.high() - estimate.low()) / 2 / Normal.HALF_OF_80;
    }

    private static double quantile(double[] mean, double[] sd, double[] weight, double chance) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (int i = 0; i < mean.length; i++) {
            double at = mean[i] + sd[i] * Normal.quantile(chance);
            low = Math.min(low, at);
            high = Math.max(high, at);
            sum += weight[i];
        }
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            double below = 0;
            for (int i = 0; i < mean.length; i++) {
                below += weight[i] / sum * Normal.below((middle - mean[i]) / sd[i]);
            }
            low = below < chance ? middle : low;
            high = below < chance ? high : middle;
        }
        return (low + high) / 2;
    }

    private static Finding leftOut(LoggedGrowth part) {
        return new Finding.Caution(
                Phrase.of(
                        "An earlier part that went from {} to {} is left out.",
                        part.before().quantity(),
                        part.after().quantity()),
                Phrase.of("No tool steel changes by more than {} of its size when hardened.", Quantity.fraction(MOST)),
                Phrase.of("Check what was written down, and its unit."));
    }
}
