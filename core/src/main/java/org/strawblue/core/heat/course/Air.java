package org.strawblue.core.heat.course;

import java.util.List;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * Air about a part: its properties, straight lines between the rows of {@code air.csv}, level beyond them; its film by free
 * convection; radiation as a film.
 */
public final class Air {

    static final Constants FAST = Constants.of(Air.class, "fast.csv");

    private static final double SIGMA = SteelProperties.STEFAN_BOLTZMANN;
    private static final double GRAVITY = FAST.number("gravity");
    private static final double A = FAST.number("cylinder-a");
    private static final double B = FAST.number("cylinder-b");
    private static final double C = FAST.number("cylinder-c");
    private static final double UP = FAST.number("flat-up");

    private static final int STEP = 4;
    private static final List<Row> ROWS = Table.of(Air.class, "air.csv").rows();
    private static final double FIRST = ROWS.get(0).number("kelvin");
    private static final double LAST = ROWS.get(ROWS.size() - 1).number("kelvin");
    private static final double[] CONDUCTIVITY = table("conductivity_W_mK", false);
    /** Nu k/D = CYLINDER (ΔT D³)^(1/6) term, the properties alone: (g/(T ν²)) Pr / (1 + (c/Pr)^(9/16))^(16/9). */
    private static final double[] LIFT = table("viscosity_m2_s", true);

    private static final double[] PRANDTL_LIFT = flat();

    private Air() {}

    /** [W/(m·K)] */
    public static double conductivity(double kelvin) {
        return read(CONDUCTIVITY, kelvin);
    }

    /**
     * Film [W/(m²·K)] about a lying bar of this diameter [m] between a surface and the air [K]: Nu = (0.60 + 0.387 Ra^(1/6) /
     * [1 + (0.559/Pr)^(9/16)]^(8/27))², properties at the mean of both. Range: Ra to 10¹². Source: Churchill and Chu 1975.
     */
    public static double aboutBar(double diameter, double surface, double air) {
        double middle = (surface + air) / 2;
        double grashof = read(LIFT, middle) * Math.abs(surface - air) * diameter * diameter * diameter;
        double root = A + B * Math.sqrt(Math.cbrt(grashof));
        return root * root * conductivity(middle) / diameter;
    }

    /** Film [W/(m²·K)] above a flat, its area over its perimeter [m] given. */
    static double aboveFlat(double areaOverPerimeter, double surface, double air) {
        double middle = (surface + air) / 2;
        double l = areaOverPerimeter;
        double rayleigh = read(PRANDTL_LIFT, middle) * Math.abs(surface - air) * l * l * l;
        return UP * Math.sqrt(Math.sqrt(rayleigh)) * conductivity(middle) / l;
    }

    /** σ (T₁² + T₂²)(T₁ + T₂) [W/(m²·K)]: radiation between black bodies as a film. */
    static double radiation(double one, double other) {
        return SIGMA * (one * one + other * other) * (one + other);
    }

    private static double read(double[] table, double kelvin) {
        double place = (Math.max(FIRST, Math.min(LAST, kelvin)) - FIRST) / STEP;
        int i = Math.min((int) place, table.length - 2);
        return table[i] + (place - i) * (table[i + 1] - table[i]);
    }

    private static double[] table(String column, boolean lift) {
        double[] table = new double[(int) ((LAST - FIRST) / STEP) + 1];
        for (int i = 0; i < table.length; i++) {
            double kelvin = FIRST + i * STEP;
            double value = between(column, kelvin);
            table[i] = lift ? lift(kelvin, value, between("prandtl", kelvin)) : value;
        }
        return table;
    }

    private static double[] flat() {
        double[] table = LIFT.clone();
        for (int i = 0; i < table.length; i++) {
            double kelvin = FIRST + i * STEP;
            double viscosity = between("viscosity_m2_s", kelvin);
            table[i] = GRAVITY / (kelvin * viscosity * viscosity) * between("prandtl", kelvin);
        }
        return table;
    }

    private static double lift(double kelvin, double viscosity, double prandtl) {
        double damped = Math.pow(1 + Math.pow(C / prandtl, 9.0 / 16), 16.0 / 9);
        return GRAVITY / (kelvin * viscosity * viscosity) * prandtl / damped;
    }

    private static double between(String column, double kelvin) {
        for (int i = 1; i < ROWS.size(); i++) {
            double to = ROWS.get(i).number("kelvin");
            if (kelvin <= to) {
                double from = ROWS.get(i - 1).number("kelvin");
                double share = (kelvin - from) / (to - from);
                return ROWS.get(i - 1).number(column) * (1 - share)
                        + ROWS.get(i).number(column) * share;
            }
        }
        return ROWS.get(ROWS.size() - 1).number(column);
    }

    /** [m] */
    static double blendLength() {
        return FAST.si("blend-length", Dimension.LENGTH);
    }
}
