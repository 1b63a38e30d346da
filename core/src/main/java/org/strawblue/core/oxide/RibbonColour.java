package org.strawblue.core.oxide;

/** The colour after a given time at one temperature [K]. */
public record RibbonColour(double kelvin, FilmColour colour) {}
