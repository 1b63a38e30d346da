package org.strawblue.core.oxide;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.history.Trace;

/**
 * A film along a history, so that its colour may be asked at any moment: the equivalent time Θ of each growth law is summed
 * once, when first asked for, and each question costs no more than the last piece of the way.
 */
public final class FilmRun {

    private final FilmColours colours;
    private final Trace trace;
    private final Light light;
    private final ChromiumEffect effect;
    private final double[] peak;
    private final Map<String, double[]> grown = new ConcurrentHashMap<>();

    FilmRun(FilmColours colours, Trace trace, Light light, ChromiumEffect effect) {
        this.colours = colours;
        this.trace = trace;
        this.light = light;
        this.effect = effect;
        this.peak = new double[trace.size()];
        peak[0] = trace.kelvin(0);
        for (int i = 1; i < peak.length; i++) {
            peak[i] = Math.max(peak[i - 1], trace.kelvin(i));
        }
    }

    private double[] sum(GrowthLaw law) {
        double[] sum = new double[trace.size()];
        for (int i = 1; i < sum.length; i++) {
            double seconds = trace.second(i) - trace.second(i - 1);
            sum[i] = sum[i - 1] + FilmGrowth.equivalentSeconds(trace.kelvin(i - 1), trace.kelvin(i), seconds, law);
        }
        return sum;
    }

    /**
     * The colour a time [s] after the start. Refused where the metal was not yet hot enough or so far not hot for long enough
     * to be told.
     */
    public Answer<ColourReading> at(double seconds) {
        double hottest = Math.max(peak[index(seconds)], trace.at(seconds));
        List<Finding> stops = Limits.check(hottest, seconds - trace.second(0), 0);
        return stops.isEmpty()
                ? Answer.of(colours.reading(
                        heat(colours.law(), seconds, hottest), l -> heat(l, seconds, hottest), effect, light))
                : Answer.refused(stops);
    }

    /** Thickness [m] of the film a time [s] after the start, whatever the limits. */
    public double thickness(double seconds) {
        double hottest = Math.max(peak[index(seconds)], trace.at(seconds));
        return heat(colours.law(), seconds, hottest).thickness(colours.law(), FilmGrowth.airFormed(), 0);
    }

    private Heat heat(GrowthLaw law, double seconds, double hottest) {
        return Heat.of(hottest, equivalentSeconds(law, seconds), law, effect);
    }

    private double equivalentSeconds(GrowthLaw law, double seconds) {
        int i = index(seconds);
        double so = grown.computeIfAbsent(law.name(), name -> sum(law))[i];
        double on = seconds - trace.second(i);
        return on > 0 && i < trace.size() - 1
                ? so + FilmGrowth.equivalentSeconds(trace.kelvin(i), trace.at(seconds), on, law)
                : so;
    }

    private int index(double seconds) {
        return Math.max(0, Math.min(trace.before(seconds), trace.size() - 1));
    }
}
