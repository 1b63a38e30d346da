package org.strawblue.core.evidence.judge;

import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.evidence.observe.Observation;

/**
 * What one observation was worth.
 *
 * @param without the temperature told by all the others
 * @param bits by how much it moved the belief, as information [bit]
 * @param surprise chance of something as odd as this, going by all the others [1]
 * @param counted whether it counted: the same look again does not
 */
public record Worth(Observation observation, Estimate without, double bits, double surprise, boolean counted) {}
