package org.strawblue.core.oxide;

import org.strawblue.core.colour.Lab;

/**
 * The colour of one film in one light.
 *
 * @param thickness optical thickness [m]
 * @param hex for a screen, "#rrggbb": sRGB with a perfect white surface at #ffffff
 */
public record FilmColour(ColourName name, double thickness, Lab lab, String hex) {}
