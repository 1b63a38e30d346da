package org.strawblue.core.evidence.sample;

import java.util.SplittableRandom;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Draws anew where evidence puts the weight: a bell with the weighted mean and covariance of the scores so far, a little
 * widened, and one draw in ten from the belief before. Every draw carries ln (belief / frequency drawn), so that weighing
 * stays right whatever the bell is like.
 *
 * <p>Where few histories hold all the weight, the evidence is first taken at a power below 1 that leaves a tenth of the
 * histories in play; a further round then goes on from there.
 */
final class Closer {

    private static final int OLD = 10;
    private static final double WIDER = 1.2;

    private final double[] mean;
    private final RealMatrix root;
    private final DecompositionSolver solver;
    private final double logDeterminant;

    private Closer(double[] mean, RealMatrix covariance) {
        CholeskyDecomposition cholesky = new CholeskyDecomposition(covariance);
        this.mean = mean;
        this.root = cholesky.getL();
        this.solver = cholesky.getSolver();
        this.logDeterminant = Math.log(cholesky.getDeterminant());
    }

    /** @param logWeights evidence and correction together */
    static Scores around(Scores scores, double[] logWeights, long seed) {
        Weights tempered = Weights.tempered(logWeights, scores.size() / OLD);
        return moments(scores, tempered).draw(scores.size(), seed);
    }

    private static Closer moments(Scores scores, Weights weights) {
        int d = scores.z()[0].length;
        double[] mean = new double[d];
        for (int i = 0; i < scores.size(); i++) {
            for (int j = 0; j < d; j++) {
                mean[j] += weights.of(i) * scores.z()[i][j];
            }
        }
        double[][] covariance = new double[d][d];
        for (int i = 0; i < scores.size(); i++) {
            add(covariance, weights.of(i), scores.z()[i], mean);
        }
        // a few histories tell little of a covariance: the belief before stands in for the rest
        double share = d / (d + weights.effective());
        for (int j = 0; j < d; j++) {
            for (int k = 0; k < d; k++) {
                covariance[j][k] = WIDER * ((1 - share) * covariance[j][k] + (j == k ? share : 0));
            }
        }
        return new Closer(mean, MatrixUtils.createRealMatrix(covariance));
    }

    private static void add(double[][] covariance, double weight, double[] z, double[] mean) {
        if (weight == 0) {
            return;
        }
        for (int j = 0; j < mean.length; j++) {
            for (int k = 0; k < mean.length; k++) {
                covariance[j][k] += weight * ((z[j] - mean[j]) * (z[k] - mean[k]));
            }
        }
    }

    private Scores draw(int n, long seed) {
        double[][] z = Scores.latin(n, seed).z();
        double[] correction = new double[n];
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < n; i++) {
            if (random.nextInt(OLD) > 0) {
                z[i] = moved(z[i]);
            }
            correction[i] = correction(z[i]);
        }
        return new Scores(z, correction);
    }

    private double[] moved(double[] standard) {
        double[] z = root.operate(standard);
        for (int j = 0; j < z.length; j++) {
            z[j] += mean[j];
        }
        return z;
    }

    /** ln p/(p/10 + 9 q/10), p the belief before, q the bell; what both have in common is left out. */
    private double correction(double[] z) {
        double[] off = new double[z.length];
        for (int j = 0; j < z.length; j++) {
            off[j] = z[j] - mean[j];
        }
        double before = -dot(z, z) / 2;
        double bell = -dot(off, solver.solve(MatrixUtils.createRealVector(off)).toArray()) / 2 - logDeterminant / 2;
        double more = bell - before;
        // ln(1 + 9 eˣ) is ln 9 + x where eˣ is past all numbers
        return Math.log(OLD)
                - (more > Math.log(Double.MAX_VALUE) / 2
                        ? Math.log(OLD - 1) + more
                        : Math.log1p((OLD - 1) * Math.exp(more)));
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int j = 0; j < a.length; j++) {
            sum += a[j] * b[j];
        }
        return sum;
    }
}
