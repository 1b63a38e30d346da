package org.strawblue.core.job;

import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.steel.Quenchant;

/**
 * How the person means to harden a part; whatever is absent is the planner's to choose from the shop.
 *
 * @param temperature to harden from [K]
 * @param soak time at that temperature [s]
 */
public record HardenWish(
        Optional<HeatSource> with, Optional<Quenchant> quench, OptionalDouble temperature, OptionalDouble soak) {

    public static final HardenWish OPEN =
            new HardenWish(Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
}
