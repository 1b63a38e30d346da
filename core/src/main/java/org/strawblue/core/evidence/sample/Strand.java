package org.strawblue.core.evidence.sample;

import org.strawblue.core.oxide.FilmGrowth;
import org.strawblue.core.oxide.GrowthLaw;
import org.strawblue.core.steel.HollomonJaffe;

/** What an ensemble keeps of one place: by history and moment, temperature, growth and tempering so far. */
final class Strand {

    /** Steel colder than this is not tempered by any length of a job [K]. */
    private static final double COLD = 340;
    /** Longest line in temperature taken at one go [K]. */
    private static final double LINE = 5;

    private final double[] seconds;
    private final float[] kelvin;
    private final float[] grown;
    private final float[] tempered;
    private final float[] peak;

    Strand(double[] seconds, int histories) {
        this.seconds = seconds;
        this.kelvin = new float[histories * seconds.length];
        this.grown = new float[histories * seconds.length];
        this.tempered = new float[histories * seconds.length];
        this.peak = new float[histories];
    }

    /** Temperatures [K] of one history at every moment. */
    double[] temperatures(int draw) {
        double[] all = new double[seconds.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = kelvin[draw * all.length + i];
        }
        return all;
    }

    /** Keeps one history. */
    void keep(int draw, double[] temperatures, GrowthLaw law, HollomonJaffe exchange) {
        int at = draw * seconds.length;
        double[] equivalent = FilmGrowth.runningSeconds(seconds, temperatures, law);
        double reached = HollomonJaffe.NONE;
        double hottest = temperatures[0];
        for (int i = 0; i < seconds.length; i++) {
            if (i > 0) {
                reached = further(reached, exchange, temperatures, i);
            }
            hottest = Math.max(hottest, temperatures[i]);
            kelvin[at + i] = (float) temperatures[i];
            grown[at + i] = (float) equivalent[i];
            tempered[at + i] = (float) reached;
        }
        peak[draw] = (float) hottest;
    }

    private double further(double before, HollomonJaffe exchange, double[] temperatures, int i) {
        double from = temperatures[i - 1];
        double rise = temperatures[i] - from;
        if (Math.max(from, temperatures[i]) < COLD) {
            return before;
        }
        int lines = 1 + (int) (Math.abs(rise) / LINE);
        double time = (seconds[i] - seconds[i - 1]) / lines;
        double reached = before;
        for (int k = 0; k < lines; k++) {
            reached = exchange.after(reached, from + rise * (2 * k + 1) / (2 * lines), time);
        }
        return reached;
    }

    double kelvin(int draw, double second) {
        return between(kelvin, draw, second);
    }

    double grown(int draw, double second) {
        return between(grown, draw, second);
    }

    double tempered(int draw, double second) {
        double value = between(tempered, draw, second);
        return Double.isNaN(value) ? HollomonJaffe.NONE : value;
    }

    double peak(int draw) {
        return peak[draw];
    }

    private double between(float[] values, int draw, double second) {
        int at = draw * seconds.length;
        int i = java.util.Arrays.binarySearch(seconds, second);
        if (i >= 0) {
            return values[at + i];
        }
        int after = -i - 1;
        if (after == 0 || after == seconds.length) {
            return values[at + Math.min(after, seconds.length - 1)];
        }
        double share = (second - seconds[after - 1]) / (seconds[after] - seconds[after - 1]);
        return values[at + after - 1] + share * (values[at + after] - values[at + after - 1]);
    }
}
