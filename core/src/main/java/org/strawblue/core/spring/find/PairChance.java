package org.strawblue.core.spring.find;

import org.strawblue.core.spring.EvenPoints;
import org.strawblue.core.spring.MeasuredInputs;

/**
 * The chance that two springs together keep every limit: the share of evenly spread points, in the ten errors of their
 * measurement, at which they do.
 */
final class PairChance {

    private static final double[][] POINTS =
            EvenPoints.normal((int) Practice.OF.number("pair_points"), 2 * MeasuredInputs.COUNT);

    private PairChance() {}

    /** [1] */
    static double of(Pair pair) {
        MeasuredInputs first = pair.first().spring().inputs();
        MeasuredInputs second = pair.second().spring().inputs();
        int kept = 0;
        for (double[] z : POINTS) {
            boolean works = pair.worst(first.sampled(z, 0), second.sampled(z, MeasuredInputs.COUNT)) >= 0;
            kept += works ? 1 : 0;
        }
        return (double) kept / POINTS.length;
    }
}
