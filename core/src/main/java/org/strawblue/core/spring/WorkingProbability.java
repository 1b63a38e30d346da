package org.strawblue.core.spring;

import java.util.Optional;
import org.strawblue.core.estimate.Normal;

/**
 * The chance that a spring keeps every limit, given what its owner's measurements leave open.
 *
 * <p>P = mean over evenly spread (d, D_e, n_t, k-factor) of [Φ((b − μ)/σ) − Φ((a − μ)/σ)], where a to b are the free
 * lengths that keep all limits and μ, σ belong to the measured free length: four of the five errors are sampled
 * evenly, the fifth is integrated exactly. The limits themselves are not linearised. No random numbers: the same drawer
 * gives the same answer, and neighbouring springs compare fairly.
 */
final class WorkingProbability {

    private static final int OTHERS = 4;
    private static final WorkingProbability COARSE = new WorkingProbability(24);
    private static final WorkingProbability FINE = new WorkingProbability(512);

    private final double[][] points;

    private WorkingProbability(int count) {
        points = EvenPoints.normal(count, OTHERS);
    }

    /** To rank the cuts of one spring among each other. */
    static WorkingProbability coarse() {
        return COARSE;
    }

    /** To tell. */
    static WorkingProbability fine() {
        return FINE;
    }

    double of(MeasuredInputs inputs, Optional<Cut> cut, Duty duty) {
        double active = inputs.nominal(cut).active();
        double stiffness = inputs.stiffnessHalfWidth(active) / Normal.HALF_OF_80;
        double sum = 0;
        for (double[] z : points) {
            sum += share(inputs, cut, duty, z, stiffness);
        }
        return sum / points.length;
    }

    private static double share(
            MeasuredInputs in, Optional<Cut> cut, Duty duty, double[] z, double stiffnessDeviation) {
        double wire = at(in, MeasuredInputs.WIRE, z[0]);
        double outside = at(in, MeasuredInputs.OUTSIDE, z[1]);
        double coils = at(in, MeasuredInputs.COILS, z[2]);
        double stiffness = in.middle()[MeasuredInputs.STIFFNESS] + z[3] * stiffnessDeviation;
        double free = in.middle()[MeasuredInputs.FREE];
        Coil coil = in.coil(cut, wire, outside, free, coils, stiffness);
        FreeLengthRange range = FreeLengthRange.of(coil, duty);
        return range.none() ? 0 : share(in, cut, coil, range);
    }

    /** A longer free length before the cut makes the spring longer after it, by the share of the body that is left. */
    private static double share(MeasuredInputs in, Optional<Cut> cut, Coil made, FreeLengthRange range) {
        double deviation = in.halfWidth()[MeasuredInputs.FREE] / Normal.HALF_OF_80;
        double kept = cut.isPresent() ? kept(in, cut.get(), made) : 1;
        double unit = kept * deviation;
        return NormalCurve.below((range.high() - made.free()) / unit)
                - NormalCurve.below((range.low() - made.free()) / unit);
    }

    private static double kept(MeasuredInputs in, Cut cut, Coil made) {
        double after = made.active() + made.ends().lengthPitches();
        double before =
                made.total() + cut.removed() - in.ends().inactive() + in.ends().lengthPitches();
        return after / before;
    }

    private static double at(MeasuredInputs in, int input, double z) {
        return in.middle()[input] + z * in.halfWidth()[input] / Normal.HALF_OF_80;
    }
}
