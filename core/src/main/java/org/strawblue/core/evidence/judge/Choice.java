package org.strawblue.core.evidence.judge;

import org.strawblue.core.evidence.sample.Ensemble;

/** One of a few looks in order was seen: dry, barely, slick. A share of all looks is simply wrong and could be any. */
final class Choice implements Clue {

    private static final double LAPSE = Looks.number("lapse");

    /** Chances [1] of the looks, from the lowest, in one history; in sum 1. NaN where the history tells nothing. */
    @FunctionalInterface
    interface Chances {
        double[] of(Ensemble ensemble, int draw);
    }

    private final Chances chances;
    private final int seen;

    Choice(Chances chances, int seen) {
        this.chances = chances;
        this.seen = seen;
    }

    /** The same question with another answer. */
    Choice answered(int other) {
        return new Choice(chances, other);
    }

    int answers(Ensemble ensemble) {
        return chances.of(ensemble, 0).length;
    }

    /** Chance [1] of an answer. */
    double chance(Ensemble ensemble, int draw, int answer) {
        double[] all = chances.of(ensemble, draw);
        double plain = all[answer];
        return Double.isNaN(plain) ? 1.0 / all.length : (1 - LAPSE) * plain + LAPSE / all.length;
    }

    @Override
    public double log(Ensemble ensemble, int draw) {
        return Math.log(chance(ensemble, draw, seen));
    }

    /** Lapses left out: a look is told as odd by what it should have been. */
    @Override
    public double atMost(Ensemble ensemble, int draw) {
        return between(ensemble, draw, 0, seen);
    }

    @Override
    public double atLeast(Ensemble ensemble, int draw) {
        return between(ensemble, draw, seen, answers(ensemble) - 1);
    }

    private double between(Ensemble ensemble, int draw, int first, int last) {
        double[] all = chances.of(ensemble, draw);
        double sum = 0;
        for (int i = first; i <= last; i++) {
            sum += all[i];
        }
        return Double.isNaN(sum) ? 1 : sum;
    }
}
