package org.strawblue.core.heat;

import java.util.OptionalDouble;
import org.strawblue.core.part.PartShape;

/**
 * What a part's surface meets: q = h (T_gas − T) + ε σ (T_walls⁴ − T⁴) + h_loss (T_room − T) [W/m²].
 *
 * @param film h [W/(m²·K)]
 * @param gas T_gas [K]
 * @param emissivity ε, view of the walls included [1]
 * @param walls T_walls [K]
 * @param lossFilm h_loss, of the side turned away from the heat [W/(m²·K)]
 */
record Exposure(double film, double gas, double emissivity, double walls, double lossFilm) {

    private static final double SIGMA = SteelProperties.STEFAN_BOLTZMANN;
    private static final double ROOM =
            SteelProperties.HEAT.si("room", org.strawblue.core.quantity.Dimension.TEMPERATURE);

    static Exposure to(double film, double gas, double emissivity, double walls) {
        return new Exposure(film, gas, emissivity, walls, 0);
    }

    /** [W/m²] into a surface at this temperature [K]. */
    double flux(double kelvin) {
        return film * (gas - kelvin)
                + emissivity * SIGMA * (Math.pow(walls, 4) - Math.pow(kelvin, 4))
                + lossFilm * (ROOM - kelvin);
    }

    /**
     * Time [s] to heat {@code shape}, all at one temperature, from one temperature [K] to a higher one: t = ρ (V/S) ∫ dH/q.
     * Empty where it never gets there.
     */
    OptionalDouble heating(PartShape shape, double from, double to) {
        double time = 0;
        int steps = Math.max(1, (int) Math.ceil((to - from) / 2));
        double step = (to - from) / steps;
        for (int i = 0; i < steps; i++) {
            double middle = from + (i + 1.0 / 2) * step;
            double flux = flux(middle);
            if (flux <= 0) {
                return OptionalDouble.empty();
            }
            time += SteelProperties.enthalpy(middle - step / 2, middle + step / 2) / flux;
        }
        return OptionalDouble.of(SteelProperties.DENSITY * shape.volumeOverSurface() * time);
    }
}
