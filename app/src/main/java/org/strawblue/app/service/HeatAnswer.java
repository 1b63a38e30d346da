package org.strawblue.app.service;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * What is to be said of one heat.
 *
 * @param story worked out when it is asked for; absent where the heat is refused
 */
public record HeatAnswer(Sheet sheet, Optional<Supplier<HeatStory>> story) {}
