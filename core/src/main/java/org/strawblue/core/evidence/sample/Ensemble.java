package org.strawblue.core.evidence.sample;

import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.history.Place;

/**
 * Histories one heat may have had: each a full set of influences and what the part did under them. Evidence weighs them by
 * the logarithm of its likelihood, draw by draw; what is asked without weights is the belief before evidence.
 */
public interface Ensemble {

    /** Number of histories. */
    int size();

    /** An influence in history {@code draw}, in the core's unit. */
    double influence(Influence influence, int draw);

    /** Temperature [K] of a place after a time [s] from the start of the course. */
    double kelvin(Place place, double seconds, int draw);

    /** Highest temperature [K] of a place. */
    double peak(Place place, int draw);

    /** Time [s] at the peak that tempers as much as the whole history. */
    double seconds(Place place, int draw);

    /** Film thickness [m] on a place after a time [s]. */
    double film(Place place, double seconds, int draw);

    /** Hardness as quenched [HRC]; NaN where the steel tells none. */
    double asQuenched(int draw);

    /** Hardness [HRC] of a place after a time [s], were it cooled then; NaN where no law tells. */
    double hardness(Place place, double seconds, int draw);

    /** Length of the whole course [s]. */
    double duration();

    /** Temperature [K] of a place after a time [s], with what it rests on. */
    Estimate band(Place place, double seconds);
}
