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
    private static final double LEAST = 1e-3;
    private static final WorkingProbability COARSE = new WorkingProbability(24);

    private final double[][] points;

    /** Points made when first asked for. */
    private static final class Middling {
        private static final WorkingProbability POINTS = new WorkingProbability(96);
    }

    private static final class Fine {
        private static final WorkingProbability POINTS = new WorkingProbability(1024);
    }

    private WorkingProbability(int count) {
        points = EvenPoints.normal(count, OTHERS);
    }

    /** To rank the cuts of one spring among each other. */
    static WorkingProbability coarse() {
        return COARSE;
    }

    /** To rank very many springs among each other. */
    static WorkingProbability middling() {
        return Middling.POINTS;
    }

    /** To tell. */
    static WorkingProbability fine() {
        return Fine.POINTS;
    }

    double of(MeasuredInputs inputs, Optional<Cut> cut, Duty duty) {
        double active = inputs.nominal(cut).active();
        double stiffness = inputs.stiffnessHalfWidth(active) / Normal.HALF_OF_80;
        double[] mirror = mirror(inputs, cut, duty, stiffness);
        double[] z = new double[OTHERS];
        double sum = 0;
        for (double[] point : points) {
            turn(point, mirror, z);
            sum += share(inputs, cut, duty, z, stiffness);
        }
        return sum / points.length;
    }

    /**
     * The unit vector along which to mirror the points so that their first, most evenly spread coordinate runs in the
     * direction in which force at rest changes fastest: most of the doubt lies along it.
     */
    private static double[] mirror(MeasuredInputs in, Optional<Cut> cut, Duty duty, double stiffness) {
        double[] v = new double[OTHERS];
        double[] z = new double[OTHERS];
        double square = 0;
        for (int i = 0; i < OTHERS; i++) {
            z[i] = 1;
            v[i] = logForce(in, cut, duty, z, stiffness);
            z[i] = -1;
            v[i] -= logForce(in, cut, duty, z, stiffness);
            z[i] = 0;
            square += v[i] * v[i];
        }
        double length = Math.sqrt(square);
        v[0] += v[0] < 0 ? -length : length;
        double norm = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2] + v[3] * v[3]);
        for (int i = 0; i < OTHERS; i++) {
            v[i] = norm > 0 ? v[i] / norm : 0;
        }
        return v;
    }

    private static double logForce(MeasuredInputs in, Optional<Cut> cut, Duty duty, double[] z, double stiffness) {
        Coil coil = coil(in, cut, z, stiffness);
        double least = LEAST * duty.atRest();
        double deflection = Math.max(coil.free() - duty.atRest(), least);
        return Math.log(coil.rate(duty.moduli()) * deflection);
    }

    private static void turn(double[] point, double[] mirror, double[] z) {
        double along = 0;
        for (int i = 0; i < OTHERS; i++) {
            along += point[i] * mirror[i];
        }
        for (int i = 0; i < OTHERS; i++) {
            z[i] = point[i] - 2 * along * mirror[i];
        }
    }

    private static double share(
            MeasuredInputs in, Optional<Cut> cut, Duty duty, double[] z, double stiffnessDeviation) {
        Coil coil = coil(in, cut, z, stiffnessDeviation);
        FreeLengthRange range = FreeLengthRange.of(coil, duty);
        return range.none() ? 0 : share(in, cut, coil, range);
    }

    private static Coil coil(MeasuredInputs in, Optional<Cut> cut, double[] z, double stiffnessDeviation) {
        double wire = at(in, MeasuredInputs.WIRE, z[0]);
        double outside = at(in, MeasuredInputs.OUTSIDE, z[1]);
        double coils = at(in, MeasuredInputs.COILS, z[2]);
        double stiffness = in.middle()[MeasuredInputs.STIFFNESS] + z[3] * stiffnessDeviation;
        return in.coil(cut, wire, outside, in.middle()[MeasuredInputs.FREE], coils, stiffness);
    }

    /** A longer free length before the cut makes the spring longer after it, by the share of the body that is left. */
    private static double share(MeasuredInputs in, Optional<Cut> cut, Coil made, FreeLengthRange range) {
        double deviation = in.halfWidth()[MeasuredInputs.FREE] / Normal.HALF_OF_80;
        double kept = cut.isPresent() ? kept(in, cut.get(), made) : 1;
        double unit = kept * deviation;
        return Normal.nearlyBelow((range.high() - made.free()) / unit)
                - Normal.nearlyBelow((range.low() - made.free()) / unit);
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
