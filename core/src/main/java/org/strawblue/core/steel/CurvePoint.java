package org.strawblue.core.steel;

import org.strawblue.core.estimate.Estimate;

/**
 * One point of a drawn tempering curve.
 *
 * @param kelvin temperature of the hold [K]
 * @param hardness hardness after it [HRC]
 */
public record CurvePoint(double kelvin, Estimate hardness) {}
