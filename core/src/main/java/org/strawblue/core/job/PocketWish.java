package org.strawblue.core.job;

import java.util.Optional;
import org.strawblue.core.quantity.Band;

/**
 * A place for a compression spring. Lengths [m], forces [N].
 *
 * @param bore hole the spring sits in
 * @param rod rod or spigot inside the spring
 * @param lengthAtRest room for the spring with the mechanism at rest
 * @param travel how much shorter that room gets at full travel
 */
public record PocketWish(
        String name,
        Optional<Double> bore,
        Optional<Double> rod,
        Optional<Double> lengthAtRest,
        Optional<Double> travel,
        Optional<Band> forceAtRest,
        Optional<Band> forceAtFullTravel,
        Optional<String> seating) {}
