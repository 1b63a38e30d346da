package org.strawblue.app.service;

import java.util.Collection;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.history.Place;
import org.strawblue.core.source.Basis;
import org.strawblue.core.watch.Goal;

/** How much of a heat is not known: what a part may have instead of what was reckoned. */
interface Doubts {

    /** Temperature [K] of a place, its interval about the reckoned value. */
    Estimate kelvin(Place place, double seconds, double value);

    /** Hardness [HRC], the law's interval widened by what is not known of the heat. */
    Estimate hardness(Place place, double seconds, Estimate byLaw);

    /** When a goal is reached [s after the main spell began], its interval about the reckoned moment. */
    Estimate moment(Goal goal, Place place, double best, double upTo);

    Collection<Basis> bases();

    /** The width of an interval laid about another value. */
    static Estimate about(double value, Estimate band) {
        return Estimate.of(
                band.dimension(),
                value,
                value - (band.value() - band.low()),
                value + (band.high() - band.value()),
                band.bases());
    }
}
