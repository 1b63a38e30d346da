package org.strawblue.core.heat.conduction;

import java.util.List;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** Air: conductivity, and free convection from a horizontal cylinder. */
final class Air {

    static final Constants FIGURES = Constants.of(Air.class, "conduction.csv");
    static final Constants SHARED = Constants.of(Course.class, "fast.csv");

    private static final double[] KELVIN;
    private static final double[] CONDUCTIVITY;
    private static final double[] VISCOSITY;
    private static final double[] PRANDTL;

    private static final double GRAVITY = SHARED.number("gravity");
    private static final double STILL = SHARED.number("cylinder-a");
    private static final double MOVING = SHARED.number("cylinder-b");
    private static final double PRANDTL_TERM = SHARED.number("cylinder-c");

    static {
        List<Row> rows = Table.of(Course.class, "air.csv").rows();
        KELVIN = column(rows, "kelvin");
        CONDUCTIVITY = column(rows, "conductivity_W_mK");
        VISCOSITY = column(rows, "viscosity_m2_s");
        PRANDTL = column(rows, "prandtl");
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
        double prandtl = at(PRANDTL, mean);
        double rayleigh =
                GRAVITY / mean * Math.abs(surface - air) * Math.pow(diameter, 3) * prandtl / (viscosity * viscosity);
        double factor = MOVING / Math.pow(1 + Math.pow(PRANDTL_TERM / prandtl, 9.0 / 16), 8.0 / 27);
        double root = STILL + factor * Math.pow(rayleigh, 1.0 / 6);
        return root * root * at(CONDUCTIVITY, mean) / diameter;
    }
}
