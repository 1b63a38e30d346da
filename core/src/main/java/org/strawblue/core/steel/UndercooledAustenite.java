package org.strawblue.core.steel;

import org.strawblue.core.source.Basis;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** How undercooled austenite carries and holds heat, taken as constant over a quench. */
public final class UndercooledAustenite {

    private static final Row ROW =
            Table.of(UndercooledAustenite.class, "austenite.csv").rows().get(0);

    /** Thermal conductivity [W/(m·K)]. */
    public static final double CONDUCTIVITY = ROW.number("conductivity_W_mK");

    /** Heat capacity of a volume [J/(m³·K)]. */
    public static final double CAPACITY = ROW.number("density_kg_m3") * ROW.number("specific_heat_J_kgK");

    /** Thermal diffusivity [m²/s]. */
    public static final double DIFFUSIVITY = CONDUCTIVITY / CAPACITY;

    public static final Basis BASIS = GradeTables.basis(ROW, "heat in undercooled austenite");

    private UndercooledAustenite() {}
}
