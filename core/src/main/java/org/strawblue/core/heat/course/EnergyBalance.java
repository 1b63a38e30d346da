package org.strawblue.core.heat.course;

/**
 * Heat that went through the surface against heat that is found in the part.
 *
 * @param through net heat in through the surfaces, the power integrated over time [J]
 * @param stored change of the part's enthalpy [J]
 * @param exchanged heat in plus heat out, whatever its direction [J]
 */
public record EnergyBalance(double through, double stored, double exchanged) {

    /** What is missing, as a share of all that was exchanged [1]. */
    public double error() {
        return exchanged > 0 ? Math.abs(through - stored) / exchanged : 0;
    }

    public EnergyBalance plus(EnergyBalance other) {
        return new EnergyBalance(through + other.through, stored + other.stored, exchanged + other.exchanged);
    }
}
