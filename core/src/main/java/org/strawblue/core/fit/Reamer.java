package org.strawblue.core.fit;

import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Units;

/**
 * d_max = D_max − 0.15 IT, d_min = d_max − 0.35 IT, both shares rounded up to whole micrometres.
 *
 * <p>D_max largest hole [m], IT width of its tolerance [m]: the reamer that cuts a hole within limits and may wear before
 * it cuts too small. Source: DIN 1420 as printed, rule and table.
 */
public final class Reamer {

    private static final double BELOW_TOP = Figures.ALL.number("reamer_below_top");
    private static final double TOLERANCE = Figures.ALL.number("reamer_tolerance");
    private static final double MICRON = Units.of(Dimension.LENGTH, "µm").factor();

    private Reamer() {}

    /** Smallest and largest reamer for a hole of these limits [m]. */
    public static Band forHole(Band hole) {
        double largest = hole.high() - roundedUp(BELOW_TOP * hole.width());
        return new Band(Dimension.LENGTH, largest - roundedUp(TOLERANCE * hole.width()), largest);
    }

    private static double roundedUp(double metres) {
        // a width that is whole micrometres save for the last digits must not be rounded up by one
        return Math.ceil(metres / MICRON - 1e-6) * MICRON;
    }
}
