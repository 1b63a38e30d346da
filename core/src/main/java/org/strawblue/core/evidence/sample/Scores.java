package org.strawblue.core.evidence.sample;

import java.util.SplittableRandom;
import org.strawblue.core.estimate.Normal;

/**
 * Standard scores of every influence in every history, and by how much each history is drawn more or less often than the
 * belief before evidence has it.
 *
 * @param z by history, then by influence
 * @param correction ln (belief / frequency drawn) of each history
 */
@SuppressWarnings("ArrayRecordComponent") // shared within the package, never changed
record Scores(double[][] z, double[] correction) {

    private static final int INFLUENCES = Influence.values().length;

    /** A Latin hypercube: every influence has one value in each n-th part of its chances. */
    static Scores latin(int n, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[][] z = new double[n][INFLUENCES];
        int[] order = new int[n];
        for (int j = 0; j < INFLUENCES; j++) {
            shuffle(order, random);
            for (int i = 0; i < n; i++) {
                z[i][j] = Normal.quantile((order[i] + random.nextDouble()) / n);
            }
        }
        return new Scores(z, new double[n]);
    }

    private static void shuffle(int[] order, SplittableRandom random) {
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        for (int i = order.length - 1; i > 0; i--) {
            int other = random.nextInt(i + 1);
            int kept = order[i];
            order[i] = order[other];
            order[other] = kept;
        }
    }

    int size() {
        return z.length;
    }
}
