package org.strawblue.core.steel;

/**
 * One temper: the metal held at one temperature.
 *
 * @param kelvin temperature of the metal [K]
 * @param seconds time at that temperature [s]
 */
public record Temper(double kelvin, double seconds) {

    public Temper {
        if (!(kelvin > 0 && seconds > 0)) {
            throw new IllegalArgumentException("no temper: " + kelvin + " K for " + seconds + " s");
        }
    }
}
