package org.strawblue.core.job;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.strawblue.core.heat.HeatSource;

/**
 * How the person means to temper a part; whatever is absent is the planner's to choose.
 *
 * @param temperature [K]
 * @param time at that temperature, each time [s]
 * @param times how often, 1 or more
 */
public record TemperWish(
        Optional<HeatSource> with, OptionalDouble temperature, OptionalDouble time, OptionalInt times) {

    public static final TemperWish OPEN =
            new TemperWish(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.empty());
}
