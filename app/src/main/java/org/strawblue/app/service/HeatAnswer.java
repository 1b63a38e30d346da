package org.strawblue.app.service;

import java.util.Optional;

/**
 * What is to be said of one heat.
 *
 * @param story absent where the heat is refused
 */
public record HeatAnswer(Sheet sheet, Optional<HeatStory> story) {}
