package org.strawblue.core.watch;

import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.oxide.ColourReading;
import org.strawblue.core.steel.Temper;

/**
 * One place of a part at one moment of its history, read twice.
 *
 * @param seconds since the start [s]
 * @param kelvin temperature now [K]
 * @param equivalent what the history so far counts as in tempering: so long at its highest temperature
 * @param hardness [HRC] were it quenched now; refused where that is not known
 * @param colour of the film by now; refused where it tells nothing
 */
public record Reading(
        double seconds, double kelvin, Temper equivalent, Answer<Estimate> hardness, Answer<ColourReading> colour) {}
