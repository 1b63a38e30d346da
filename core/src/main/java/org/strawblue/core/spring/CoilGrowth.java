package org.strawblue.core.spring;

/** How much wider the coil becomes as its pitch falls: the reason why a spring jams in a bore it slips into. */
public interface CoilGrowth {

    /**
     * @param meanDiameter free [m]
     * @param wire [m]
     * @param freePitch [m]
     * @param pitch when pressed, counted on the coils as they were when free [m]
     * @return growth of the diameter [m]
     */
    double growth(Moduli moduli, double meanDiameter, double wire, double freePitch, double pitch);
}
