package org.strawblue.app.service;

import java.util.Collection;
import java.util.TreeSet;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.history.Place;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.watch.Goal;

/** Doubts by histories drawn with the fast model. */
final class DrawnDoubts implements Doubts {

    /** Histories the intervals are taken from: their ends are right to about a twentieth of the width. */
    private static final int HISTORIES = 400;

    private static final long SEED = 1;
    private static final int HALVINGS = 14;

    private final HeatRequest request;
    private final Ensemble ensemble;

    DrawnDoubts(HeatRequest request, double seconds) {
        this.request = request;
        this.ensemble = Ensemble.draw(request.takenOffAfter(seconds), request.steel(), Priors.usual(), HISTORIES, SEED);
    }

    @Override
    public Estimate kelvin(Place place, double seconds, double value) {
        return Doubts.about(value, ensemble.band(place, seconds));
    }

    @Override
    public Estimate hardness(Place place, double seconds, Estimate byLaw) {
        double[] drawn = ensemble.values(i -> ensemble.hardness(place, seconds, i));
        if (Double.isNaN(ensemble.weights().mean(drawn))) {
            return byLaw;
        }
        Estimate unknown = ensemble.weights().estimate(Dimension.HARDNESS, drawn, ensemble.hardnessBases());
        Estimate about = Doubts.about(byLaw.value(), unknown);
        TreeSet<Basis> bases = new TreeSet<>(byLaw.bases());
        bases.addAll(about.bases());
        return Estimate.of(
                Dimension.HARDNESS,
                byLaw.value(),
                Math.min(byLaw.low(), about.low()),
                Math.max(byLaw.high(), about.high()),
                bases);
    }

    @Override
    public Estimate moment(Goal goal, Place place, double best, double upTo) {
        Ensemble left = Ensemble.draw(request.leftOn(upTo), request.steel(), Priors.usual(), HISTORIES, SEED);
        double from = request.mainFrom();
        double[] drawn = left.values(i -> first(left, goal, place, i, from, upTo));
        Estimate band = left.weights().estimate(Dimension.TIME, drawn, left.bases());
        return Estimate.of(Dimension.TIME, best, Math.min(best, band.low()), Math.max(best, band.high()), band.bases());
    }

    private static double first(Ensemble left, Goal goal, Place place, int draw, double from, double upTo) {
        double before = 0;
        double after = upTo;
        for (int k = 0; k < HALVINGS; k++) {
            double half = (before + after) / 2;
            if (measure(left, goal, place, from + half, draw) >= goal.best()) {
                after = half;
            } else {
                before = half;
            }
        }
        return after;
    }

    private static double measure(Ensemble left, Goal goal, Place place, double seconds, int draw) {
        return goal instanceof Goal.Hardness ? left.tempered(place, seconds, draw) : left.film(place, seconds, draw);
    }

    @Override
    public Collection<Basis> bases() {
        return ensemble.bases();
    }
}
