package org.strawblue.core.job;

import java.util.Optional;

/**
 * How the person means to temper a part; whatever is absent is the planner's to choose.
 *
 * @param with one of the shop's tempering heats
 * @param temperature [K]
 * @param time at that temperature, each time [s]
 * @param times how often, 1 or more
 */
public record TemperWish(
        Optional<String> with, Optional<Double> temperature, Optional<Double> time, Optional<Integer> times) {

    public static final TemperWish OPEN =
            new TemperWish(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
