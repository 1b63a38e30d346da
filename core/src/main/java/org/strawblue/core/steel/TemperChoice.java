package org.strawblue.core.steel;

import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;

/**
 * A temperature to temper at for a wanted hardness.
 *
 * @param aim temperature to aim for [K]; its interval holds the temperature that would give the middle of the wanted
 *     band in four cases of five
 * @param window temperatures [K] whose expected hardness lies in the wanted band
 * @param hardness hardness [HRC] to expect at the aim
 * @param inBand chance that the part ends within the wanted band, from 0 to 1
 */
public record TemperChoice(Estimate aim, Band window, Estimate hardness, double inBand) {}
