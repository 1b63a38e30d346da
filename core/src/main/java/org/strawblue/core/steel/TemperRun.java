package org.strawblue.core.steel;

import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.history.Trace;

/**
 * Tempering along a history, so that the hardness may be asked at any moment of it: the Hollomon–Jaffe parameter is summed
 * once, and each question costs no more than the last piece of the way.
 */
public final class TemperRun {

    private final TemperingLaw law;
    private final Trace trace;
    private final double[] reached;
    private final double[] peak;

    private TemperRun(TemperingLaw law, Trace trace) {
        this.law = law;
        this.trace = trace;
        this.reached = new double[trace.size()];
        this.peak = new double[trace.size()];
        reached[0] = HollomonJaffe.NONE;
        peak[0] = trace.kelvin(0);
        for (int i = 1; i < reached.length; i++) {
            double seconds = trace.second(i) - trace.second(i - 1);
            reached[i] = law.exchange().along(reached[i - 1], trace.kelvin(i - 1), trace.kelvin(i), seconds);
            peak[i] = Math.max(peak[i - 1], trace.kelvin(i));
        }
    }

    /** The law that knows most of this steel, along a history of the metal. */
    public static Answer<TemperRun> of(Steel steel, Trace trace) {
        return Tempering.law(steel).map(law -> new TemperRun(law, trace));
    }

    /** A law along a history of the metal. */
    public static TemperRun of(TemperingLaw law, Trace trace) {
        return new TemperRun(law, trace);
    }

    /** What the history as far as a time [s] after its start counts as: so long at its highest temperature. */
    public Temper equivalent(double seconds) {
        int i = Math.min(trace.before(seconds), trace.size() - 1);
        double on = seconds - trace.second(Math.max(i, 0));
        if (i < 0 || i == 0 && on <= 0) {
            throw new IllegalArgumentException(seconds + " s is not after the start");
        }
        double p = reached[i];
        double hottest = peak[i];
        if (on > 0) {
            double here = trace.at(seconds);
            p = law.exchange().along(p, trace.kelvin(i), here, on);
            hottest = Math.max(hottest, here);
        }
        return new Temper(hottest, law.exchange().seconds(p, hottest));
    }

    /**
     * Hardness [HRC] had the metal been quenched at a time [s] after the start. Refused where the heat so far counts as
     * less at its peak than the shortest test behind the law.
     */
    public Answer<Estimate> hardness(double seconds) {
        return law.hardness(equivalent(seconds));
    }

    /** The Hollomon–Jaffe parameter [K] reached at the end. */
    public double parameter() {
        return reached[reached.length - 1];
    }

    /** The same at the end. */
    public Answer<Estimate> hardness() {
        return hardness(trace.second(trace.size() - 1));
    }
}
