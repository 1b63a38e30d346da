package org.strawblue.core.spring;

import org.hipparchus.special.Erf;

/**
 * Points that fill a space of normal variables evenly, the same on every run: the first coordinate in equal steps, the n
 * others by additive recurrence with the powers of the root of x^(n+1) = x + 1, which keeps its points farther apart than
 * chance does, then the inverse normal distribution.
 */
public final class EvenPoints {

    private EvenPoints() {}

    /** {@code count} points in {@code dimensions} independent standard normal variables. */
    public static double[][] normal(int count, int dimensions) {
        double root = root(dimensions - 1);
        double[][] points = new double[count][dimensions];
        for (int i = 0; i < count; i++) {
            points[i][0] = deviate((i + 0.5) / count);
        }
        for (int d = 1; d < dimensions; d++) {
            double step = 1 / Math.pow(root, d);
            for (int i = 0; i < count; i++) {
                double u = 0.5 + step * (i + 0.5);
                points[i][d] = deviate(u - Math.floor(u));
            }
        }
        return points;
    }

    /** Standard normal value with the share {@code u} below it. */
    private static double deviate(double u) {
        return Math.sqrt(2) * Erf.erfInv(2 * u - 1);
    }

    private static double root(int dimensions) {
        double x = 2;
        for (int i = 0; i < 60; i++) {
            x = Math.pow(1 + x, 1.0 / (dimensions + 1));
        }
        return x;
    }
}
