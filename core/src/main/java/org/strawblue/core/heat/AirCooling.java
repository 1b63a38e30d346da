package org.strawblue.core.heat;

import java.util.TreeSet;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenchants;
import org.strawblue.core.steel.UndercooledAustenite;

/**
 * Time in which a part at red heat falls through still air: t = ρc (V/S) ∫ dT/(h (T − T_air)), the part as one temperature, h
 * by radiation and free convection. Cold tongs, draughts and thin edges make it shorter.
 */
public final class AirCooling {

    private AirCooling() {}

    /** [s] from one temperature [K] down to another. */
    public static Estimate time(PartShape shape, double from, double to) {
        Quenchant air = Quenchants.of("still-air");
        double value = seconds(shape, air, from, to);
        TreeSet<Basis> bases = new TreeSet<>(air.bases());
        bases.add(UndercooledAustenite.BASIS);
        return Estimate.of(
                Dimension.TIME,
                value / air.strength().value(),
                value / air.strength().high(),
                value / air.strength().low(),
                bases);
    }

    private static double seconds(PartShape shape, Quenchant air, double from, double to) {
        int steps = Math.max(1, (int) Math.ceil(from - to));
        double step = (from - to) / steps;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double kelvin = to + (i + 1.0 / 2) * step;
            sum += step / (air.film().at(kelvin) * (kelvin - air.bath().value()));
        }
        return UndercooledAustenite.CAPACITY * shape.volumeOverSurface() * sum;
    }
}
