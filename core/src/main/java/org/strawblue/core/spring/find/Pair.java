package org.strawblue.core.spring.find;

import java.util.Map;
import java.util.TreeMap;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.Duty;
import org.strawblue.core.spring.Limit;

/** Two springs of the drawer that work together in one pocket. */
sealed interface Pair permits NestedPair, StackedPair {

    Member first();

    Member second();

    /** By how much each limit is kept by these two, as a share of what it is measured by; broken where below 0. */
    Map<Limit, Double> margins(Coil first, Coil second);

    default Map<Limit, Double> margins() {
        return margins(first().coil(), second().coil());
    }

    default double worst(Coil first, Coil second) {
        double worst = Double.POSITIVE_INFINITY;
        for (double margin : margins(first, second).values()) {
            worst = Math.min(worst, margin);
        }
        return worst;
    }

    /** Forces against what is wanted. */
    static Map<Limit, Double> forces(Duty duty, double rest, double full) {
        Map<Limit, Double> margins = new TreeMap<>();
        margins.put(Limit.FIRM_AT_REST, over(rest, duty.restForce().low()));
        margins.put(Limit.SOFT_AT_REST, 1 - rest / duty.restForce().high());
        margins.put(Limit.FIRM_AT_FULL_TRAVEL, over(full, duty.fullForce().low()));
        margins.put(Limit.SOFT_AT_FULL_TRAVEL, 1 - full / duty.fullForce().high());
        return margins;
    }

    private static double over(double force, double least) {
        return least > 0 ? force / least - 1 : Double.POSITIVE_INFINITY;
    }
}
