package org.strawblue.core.heat.conduction;

import org.strawblue.core.heat.SteelProperties;

/**
 * Temperature T [K] and conduction potential θ = ∫ k dT [W/m] of steel by its enthalpy H = ρ ∫ c dT [J/m³], read from a table
 * even in H, so that the peak of the change at 735 °C, where T hardly moves, is as finely divided as the rest.
 */
final class SteelHeat {

    /** K per unit of the solver's unknown y = H/(ρ c₀): any fixed figure does; this one makes y nearly a temperature. */
    private static final double SCALE = SteelProperties.DENSITY * SteelProperties.specificHeat(400);

    private static final int ENTRIES = 6000;
    private static final double COLDEST = 150;
    private static final double HOTTEST = 1700;

    private static final double[] KELVIN = new double[ENTRIES + 1];
    private static final double[] POTENTIAL = new double[ENTRIES + 1];
    private static final double STEP;
    private static final double PER;

    static {
        int n = (int) (HOTTEST - COLDEST);
        double[] y = new double[n + 1];
        double[] theta = new double[n + 1];
        for (int i = 1; i <= n; i++) {
            double t = COLDEST + i;
            y[i] = y[i - 1] + SteelProperties.DENSITY * SteelProperties.enthalpy(t - 1, t) / SCALE;
            theta[i] = theta[i - 1] + (SteelProperties.conductivity(t - 1) + SteelProperties.conductivity(t)) / 2;
        }
        STEP = y[n] / ENTRIES;
        PER = 1 / STEP;
        int at = 0;
        for (int e = 0; e <= ENTRIES; e++) {
            double wanted = e * STEP;
            while (at < n - 1 && y[at + 1] < wanted) {
                at++;
            }
            double share = (wanted - y[at]) / (y[at + 1] - y[at]);
            KELVIN[e] = COLDEST + at + share;
            POTENTIAL[e] = theta[at] + share * (theta[at + 1] - theta[at]);
        }
    }

    private SteelHeat() {}

    /** Heat per unit of y [J/m³]. */
    static double scale() {
        return SCALE;
    }

    private static int entry(double y) {
        return Math.max(0, Math.min(ENTRIES - 1, (int) (y * PER)));
    }

    /** T [K] */
    static double kelvin(double y) {
        int e = entry(y);
        return KELVIN[e] + (y * PER - e) * (KELVIN[e + 1] - KELVIN[e]);
    }

    /** θ [W/m] */
    static double potential(double y) {
        int e = entry(y);
        return POTENTIAL[e] + (y * PER - e) * (POTENTIAL[e + 1] - POTENTIAL[e]);
    }

    /** dT/dy */
    static double kelvinSlope(double y) {
        int e = entry(y);
        return (KELVIN[e + 1] - KELVIN[e]) * PER;
    }

    /** dθ/dy */
    static double potentialSlope(double y) {
        int e = entry(y);
        return (POTENTIAL[e + 1] - POTENTIAL[e]) * PER;
    }

    /** y at a temperature [K] */
    static double unknown(double kelvin) {
        int low = 0;
        int high = ENTRIES;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (KELVIN[middle] <= kelvin) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + (kelvin - KELVIN[low]) / (KELVIN[high] - KELVIN[low])) * STEP;
    }
}
