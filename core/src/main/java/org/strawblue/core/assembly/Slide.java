package org.strawblue.core.assembly;

import java.util.List;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;

/**
 * A slide beside which something is locked or blackened.
 *
 * @param clearance of diameters [m]
 */
public record Slide(Band clearance) {

    /** What to oil it with. */
    public Oil oil() {
        return Oil.of(Math.max(0, clearance.low()));
    }

    /** How not to lock it with the screw. */
    public List<Finding> besideLocking() {
        return clearance.high() > 0 ? List.of(LockingFindings.creeps(clearance)) : List.of();
    }
}
