package org.strawblue.core.spring.family;

import org.strawblue.core.spring.Bergstraesser;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.Moduli;
import org.strawblue.core.spring.StressFactor;

/** A compression spring of round wire: see {@link Coil} for its geometry. */
public record HelicalSpring(Coil coil, Moduli moduli) implements AxialSpring {

    private static final StressFactor FACTOR = new Bergstraesser();

    @Override
    public double force(double deflection) {
        return rate() * deflection;
    }

    @Override
    public double stress(double deflection) {
        return FACTOR.stress(force(deflection), coil.mean(), coil.wire());
    }

    @Override
    public double greatestDeflection() {
        return coil.free() - coil.solid();
    }

    /** [N/m] */
    public double rate() {
        return coil.rate(moduli);
    }
}
