package org.strawblue.core.pyrometry;

import org.strawblue.core.source.Basis;

/**
 * How far an indicator is out at one temperature, and what that rests on.
 *
 * @param tolerance stated for it when new [K], 0 where nothing is
 * @param sd one standard deviation in use [K]
 */
public record IndicationError(double tolerance, double sd, Basis basis) {}
