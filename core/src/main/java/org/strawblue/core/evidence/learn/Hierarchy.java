package org.strawblue.core.evidence.learn;

import java.util.List;
import org.strawblue.core.estimate.Normal;

/**
 * x_j = μ + b_j; μ ~ N(m, s²), b_j ~ N(0, τ²), τ half-normal of scale t; a job tells y_j ~ N(x_j, e_j²).
 *
 * <p>Where one instrument told them all, y_j ~ N(x_j + c, e_j²) with its error c ~ N(0, u²) in common: jobs tell of μ + c, and μ is
 * what k = s²/(s² + u²) leaves of it.
 *
 * <p>x_j value of the thing in job j, μ its own, τ how far jobs differ. Given τ all is closed: precision of μ is 1/s² + Σ 1/(e_j² + τ²);
 * τ is summed over equal shares of its half-normal, each weighed by what the jobs make of it. One job is not over-believed, since
 * it leaves τ open. Source: the normal hierarchical model of any textbook of Bayesian statistics.
 *
 * @param mean m
 * @param sd s
 * @param between t
 * @param common u
 */
record Hierarchy(double mean, double sd, double between, double common) {

    private static final int SHARES = 96;

    /** What one job tells, on the scale of the bell. */
    record Bell(double at, double sd) {}

    /** What is believed of the thing's own value, μ. */
    Mixture own(List<Bell> told) {
        return believed(told, 0);
    }

    /** What is believed of its value in the next job. */
    Mixture next(List<Bell> told) {
        return believed(told, 1);
    }

    private Mixture believed(List<Bell> told, int jobs) {
        double[] share = new double[SHARES];
        double[] means = new double[SHARES];
        double[] sds = new double[SHARES];
        double[] logs = new double[SHARES];
        double wide = sd * sd + common * common;
        double left = sd * sd / wide;
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < SHARES; k++) {
            double tau = tau(k);
            double precision = 1 / wide;
            double sum = mean / wide;
            double log = -Math.log(wide) / 2 - mean * mean / (2 * wide);
            for (Bell y : told) {
                double variance = y.sd() * y.sd() + tau * tau;
                precision += 1 / variance;
                sum += y.at() / variance;
                log -= Math.log(variance) / 2 + y.at() * y.at() / (2 * variance);
            }
            means[k] = mean + left * (sum / precision - mean);
            sds[k] = Math.sqrt(sd * sd - left * left * (wide - 1 / precision) + jobs * tau * tau);
            logs[k] = log - Math.log(precision) / 2 + sum * sum / (2 * precision);
            most = Math.max(most, logs[k]);
        }
        double all = 0;
        for (int k = 0; k < SHARES; k++) {
            share[k] = Math.exp(logs[k] - most);
            all += share[k];
        }
        for (int k = 0; k < SHARES; k++) {
            share[k] /= all;
        }
        return new Mixture(share, means, sds);
    }

    /** Middles of equal shares of a half-normal. */
    private double tau(int k) {
        double chance = (k + 1.0 / 2) / SHARES;
        return between * Normal.quantile((1 + chance) / 2);
    }
}
