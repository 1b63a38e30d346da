package org.strawblue.core.heat.conduction;

import java.util.List;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** Air: conductivity, and free convection from a horizontal cylinder. */
final class Air {

    static final Constants FIGURES = Constants.of(Air.class, "conduction.csv");

    private static final double[] KELVIN;
    private static final double[] CONDUCTIVITY;
    private static final double[] VISCOSITY;

    private static final double PRANDTL = FIGURES.number("prandtl");
    private static final double GRAVITY = FIGURES.number("gravity");
    private static final double CONSTANT = FIGURES.number("churchill-constant");
    private static final double FACTOR = FIGURES.number("churchill-factor")
            / Math.pow(1 + Math.pow(FIGURES.number("churchill-prandtl") / PRANDTL, 9.0 / 16), 8.0 / 27);

    static {
        List<Row> rows = Table.of(Air.class, "air.csv").rows();
        KELVIN = column(rows, "celsius");
        CONDUCTIVITY = column(rows, "conductivity");
        VISCOSITY = column(rows, "viscosity");
        for (int i = 0; i < KELVIN.length; i++) {
            KELVIN[i] = Units.of(Dimension.TEMPERATURE, "°C").toSi(KELVIN[i]);
            VISCOSITY[i] *= 1e-6;
        }
    }

    private Air() {}

    private static double[] column(List<Row> rows, String name) {
        return rows.stream().mapToDouble(r -> r.number(name)).toArray();
    }

    /** [W/(m·K)] at a temperature [K]; level beyond the table's ends. */
    static double conductivity(double kelvin) {
        return at(CONDUCTIVITY, kelvin);
    }

    private static double at(double[] column, double kelvin) {
        int i = 1;
        while (i < KELVIN.length - 1 && kelvin > KELVIN[i]) {
            i++;
        }
        double share = (kelvin - KELVIN[i - 1]) / (KELVIN[i] - KELVIN[i - 1]);
        share = Math.max(0, Math.min(1, share));
        return column[i - 1] + share * (column[i] - column[i - 1]);
    }

    /**
     * Nu = (0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27))², h = Nu k/D [W/(m²·K)], properties at the mean of surface and
     * air. Range: Ra to 10¹². Source: Churchill and Chu 1975.
     *
     * @param diameter D [m]
     * @param surface [K]
     * @param air [K]
     */
    static double freeConvection(double diameter, double surface, double air) {
        double mean = (surface + air) / 2;
        double viscosity = at(VISCOSITY, mean);
        double rayleigh = GRAVITY / mean * Math.abs(surface - air) * Math.pow(diameter, 3) * PRANDTL
                / (viscosity * viscosity);
        double root = CONSTANT + FACTOR * Math.pow(rayleigh, 1.0 / 6);
        return root * root * at(CONDUCTIVITY, mean) / diameter;
    }
}
