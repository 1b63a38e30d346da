package org.strawblue.core.spring;

import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.quantity.Band;

/**
 * The place a compression spring has to work in. All lengths [m]; what is not known is absent.
 *
 * @param bore inside diameter of the hole the spring lies in
 * @param rod diameter of the rod the spring lies on
 * @param lengthAtRest of the spring when assembled and not pushed
 * @param travel how far it is pushed beyond that
 * @param forceAtRest wanted [N]
 * @param forceAtFullTravel wanted [N]
 * @param cycles how often it is pushed in its life [1]
 * @param temperature the hottest it works at [K]
 */
public record Pocket(
        String name,
        OptionalDouble bore,
        OptionalDouble rod,
        double lengthAtRest,
        double travel,
        Optional<Band> forceAtRest,
        Optional<Band> forceAtFullTravel,
        Optional<Seating> seating,
        OptionalDouble cycles,
        OptionalDouble temperature) {

    public Pocket {
        if (!(lengthAtRest > 0) || !(travel >= 0)) {
            throw new IllegalArgumentException("no such pocket: length " + lengthAtRest + ", travel " + travel);
        }
    }

    public double lengthAtFullTravel() {
        return lengthAtRest - travel;
    }
}
