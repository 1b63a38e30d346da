package org.strawblue.core.steel;

import org.strawblue.core.estimate.Estimate;

/**
 * What a quench leaves.
 *
 * @param surface hardness at the surface, clean of scale and decarburised skin [HRC]
 * @param centre hardness at the centre of the section [HRC]
 * @param retained austenite left where fully hardened [1]
 * @param depth from the surface to where half is martensite [m]; half the section where it hardens through
 * @param through chance that the centre is hard (90 % martensite), from 0 to 1
 * @param skin chance that the surface is hard, from 0 to 1
 */
public record Quenched(
        Estimate surface,
        Estimate centre,
        Estimate retained,
        Estimate depth,
        double through,
        double skin,
        Verdict verdict) {

    /** The outcome in a word. */
    public enum Verdict {
        /** Hard to the centre. */
        THROUGH,
        /** Hard to the centre more likely than not. */
        LIKELY_THROUGH,
        /** Hard outside, softer inside. */
        SHELL,
        /** The surface itself may come out soft. */
        UNSURE,
        /** Soft. */
        SOFT
    }
}
