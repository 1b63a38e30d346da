package org.strawblue.core.spring;

/**
 * D₁ = √(D² + (p₀² − p₁²)/π²): the ends cannot turn, so that neither the coils' number nor the wire's length changes.
 *
 * <p>D mean diameter [m], p pitch [m]. At solid (p₁ = d) this is the handbook formula. The mean of all coils in finite
 * elements is within 4 %; single coils wander further. Source: spring design handbook practice.
 */
public record EndsHeld() implements CoilGrowth {

    @Override
    public double growth(Moduli moduli, double meanDiameter, double wire, double freePitch, double pitch) {
        double rise = (freePitch * freePitch - pitch * pitch) / (Math.PI * Math.PI);
        return Math.sqrt(meanDiameter * meanDiameter + rise) - meanDiameter;
    }
}
