package org.strawblue.core.glow;

import org.strawblue.core.estimate.Estimate;

/**
 * A heat colour by name.
 *
 * @param temperature middle of what the authors gave, from the lowest to the highest of them [K]
 * @param hex a swatch for a screen, "#rrggbb": glow alone, the shop dark
 */
public record GlowColour(String name, Estimate temperature, String hex) {}
