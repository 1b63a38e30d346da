package org.strawblue.core.assembly;

import java.util.OptionalDouble;
import org.strawblue.core.part.ScrewThread;

/**
 * A screw to be locked.
 *
 * @param engaged length of thread in the nut [m]
 * @param metal the slower of the two surfaces
 * @param room temperature while it sets [K]
 * @param gap of the diameters [m], where the thread is looser or tighter than usual
 */
public record Lock(
        ScrewThread thread, double engaged, Strength strength, Metal metal, double room, OptionalDouble gap) {

    public Lock {
        if (!(engaged > 0)) {
            throw new IllegalArgumentException("a thread engaged over " + engaged);
        }
    }
}
