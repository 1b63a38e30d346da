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
 * @param screw that sets the preload
 * @param wet whether the spring may rust there
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
        OptionalDouble temperature,
        Optional<PreloadScrew> screw,
        boolean wet) {

    /** Dry and without a screw. */
    public Pocket(
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
        this(
                name,
                bore,
                rod,
                lengthAtRest,
                travel,
                forceAtRest,
                forceAtFullTravel,
                seating,
                cycles,
                temperature,
                Optional.empty(),
                false);
    }

    public Pocket {
        if (!(lengthAtRest > 0) || !(travel >= 0)) {
            throw new IllegalArgumentException("no such pocket: length " + lengthAtRest + ", travel " + travel);
        }
    }

    public double lengthAtFullTravel() {
        return lengthAtRest - travel;
    }

    /** The same with another bore and rod. */
    public Pocket between(OptionalDouble otherBore, OptionalDouble otherRod) {
        return of(otherBore, otherRod, lengthAtRest, travel, forceAtRest, forceAtFullTravel);
    }

    /** The same with another length at rest and travel [m]. */
    public Pocket sized(double atRest, double otherTravel) {
        return of(bore, rod, atRest, otherTravel, forceAtRest, forceAtFullTravel);
    }

    /** The same with other forces wanted. */
    public Pocket wanting(Optional<Band> atRest, Optional<Band> atFull) {
        return of(bore, rod, lengthAtRest, travel, atRest, atFull);
    }

    private Pocket of(
            OptionalDouble b, OptionalDouble r, double rest, double t, Optional<Band> atRest, Optional<Band> atFull) {
        return new Pocket(name, b, r, rest, t, atRest, atFull, seating, cycles, temperature, screw, wet);
    }

    /** The same with a screw, and wet or dry. */
    public Pocket with(Optional<PreloadScrew> otherScrew, boolean isWet) {
        return new Pocket(
                name,
                bore,
                rod,
                lengthAtRest,
                travel,
                forceAtRest,
                forceAtFullTravel,
                seating,
                cycles,
                temperature,
                otherScrew,
                isWet);
    }
}
