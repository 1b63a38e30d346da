package org.strawblue.core.spring;

import org.strawblue.core.source.Basis;

/** Force gained for each length a helical spring is pressed together. */
public interface RateLaw {

    /**
     * @param moduli of the wire [Pa]
     * @param wire [m]
     * @param meanDiameter of the coil, from wire centre to wire centre [m]
     * @param activeCoils [1]
     * @param pitch [m]
     * @return rate [N/m]
     */
    double rate(Moduli moduli, double wire, double meanDiameter, double activeCoils, double pitch);

    Basis basis();
}
