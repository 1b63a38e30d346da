package org.strawblue.core.heat.conduction;

import java.util.function.DoubleUnaryOperator;

/**
 * What a patch of surface meets, apart from a plate: q = h (T_gas − T) + ε σ (T_walls⁴ − T⁴).
 *
 * @param gas temperature by time from the start of the spell [K]
 * @param walls the same [K]
 * @param film h by surface temperature [W/(m²·K)]
 * @param emissivity ε [1]
 * @param steady whether neither temperature changes
 */
record Zone(DoubleUnaryOperator gas, DoubleUnaryOperator walls, FilmTable film, double emissivity, boolean steady) {

    static Zone steady(double gas, double walls, FilmTable film, double emissivity) {
        return new Zone(t -> gas, t -> walls, film, emissivity, true);
    }
}
