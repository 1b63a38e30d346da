package org.strawblue.core.job;

import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.PreloadScrew;
import org.strawblue.core.spring.Seating;

/**
 * A place for a compression spring, as far as it is known. Lengths [m], forces [N].
 *
 * @param bore hole the spring sits in
 * @param rod rod or spigot inside the spring
 * @param lengthAtRest room for the spring with the mechanism at rest
 * @param travel how much shorter that room gets at full travel
 * @param cycles how often it is pushed in its life [1]
 * @param temperature the hottest it works at [K]
 * @param screw that sets the preload
 * @param wet whether the spring may rust there
 */
public record PocketWish(
        String name,
        OptionalDouble bore,
        OptionalDouble rod,
        OptionalDouble lengthAtRest,
        OptionalDouble travel,
        Optional<Band> forceAtRest,
        Optional<Band> forceAtFullTravel,
        Optional<Seating> seating,
        OptionalDouble cycles,
        OptionalDouble temperature,
        Optional<PreloadScrew> screw,
        boolean wet) {

    /** Dry and without a screw. */
    public PocketWish(
            String name,
            OptionalDouble bore,
            OptionalDouble rod,
            OptionalDouble lengthAtRest,
            OptionalDouble travel,
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

    /** The pocket, where enough of it is known to look for a spring: its length at rest and its travel. */
    public Optional<Pocket> pocket() {
        if (lengthAtRest.isEmpty() || travel.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Pocket(
                name,
                bore,
                rod,
                lengthAtRest.getAsDouble(),
                travel.getAsDouble(),
                forceAtRest,
                forceAtFullTravel,
                seating,
                cycles,
                temperature,
                screw,
                wet));
    }
}
