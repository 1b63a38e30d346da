package org.strawblue.core.fit;

import java.util.List;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * D = D₀ exp(−Q/(R T)).
 *
 * <p>D₀ [m²/s], Q activation energy [J/mol], R gas constant [J/(mol·K)], T temperature [K]; the parabolic growth of scale
 * obeys the same form. Constants in {@code diffusion.csv}.
 */
record Diffusion(String key, double d0, double energy, Basis basis) {

    private static final double GAS = Constants.of(Diffusion.class, "gas.csv").inUnit("gas_constant", "J/(mol K)");
    private static final double KILO = 1000;

    static List<Diffusion> carbon() {
        return Table.of(Diffusion.class, "diffusion.csv").rows().stream()
                .filter(r -> r.text("key").startsWith("carbon"))
                .map(r -> of(r, "diffusion of carbon in austenite"))
                .toList();
    }

    static Diffusion scale() {
        return Table.of(Diffusion.class, "diffusion.csv").rows().stream()
                .filter(r -> r.text("key").startsWith("scale"))
                .map(r -> of(r, "growth of scale on iron"))
                .findFirst()
                .orElseThrow();
    }

    /** [m²/s] at a temperature [K] */
    double at(double kelvin) {
        return d0 * Math.exp(-energy / (GAS * kelvin));
    }

    private static Diffusion of(Row row, String what) {
        return new Diffusion(
                row.text("key"),
                row.number("D0_m2_s"),
                row.number("Q_kJ_mol") * KILO,
                new Basis(what, row.text("source"), Standing.of(row.text("standing"))));
    }
}
