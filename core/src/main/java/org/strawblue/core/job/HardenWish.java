package org.strawblue.core.job;

import java.util.Optional;

/**
 * How the person means to harden a part; whatever is absent is the planner's to choose from the shop.
 *
 * @param with one of the shop's hardening heats
 * @param quench one of the shop's quenchants
 * @param temperature to harden from [K]
 * @param soak time at that temperature [s]
 */
public record HardenWish(
        Optional<String> with, Optional<String> quench, Optional<Double> temperature, Optional<Double> soak) {

    public static final HardenWish OPEN =
            new HardenWish(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
