package org.strawblue.core.heat.course;

import org.strawblue.core.heat.SteelProperties;

/** Heat and conductivity of steel as tables, so that a peak of its specific heat is never stepped over. */
final class SteelHeat {

    /** Lowest and highest temperature tabled [K]; beyond them the last slope goes on. */
    private static final int COLDEST = 200;

    private static final int HOTTEST = 1700;
    private static final int NODES = 1 << 12;

    private static final double[] BY_KELVIN = byKelvin();
    private static final double MOST = BY_KELVIN[BY_KELVIN.length - 1];
    private static final double[] BY_HEAT = byHeat();

    private SteelHeat() {}

    /** Enthalpy [J/kg] above that of the coldest steel tabled. */
    static double enthalpy(double kelvin) {
        return read(BY_KELVIN, kelvin - COLDEST);
    }

    /** Temperature [K] of steel of this enthalpy [J/kg]. */
    static double temperature(double enthalpy) {
        return read(BY_HEAT, enthalpy * (NODES - 1) / MOST);
    }

    /** [J/(kg·K)], the mean over a kelvin about this temperature [K]. */
    static double capacity(double kelvin) {
        return enthalpy(kelvin + 1.0 / 2) - enthalpy(kelvin - 1.0 / 2);
    }

    private static double read(double[] table, double place) {
        int i = Math.max(0, Math.min((int) place, table.length - 2));
        return table[i] + (place - i) * (table[i + 1] - table[i]);
    }

    private static double[] byKelvin() {
        double[] table = new double[HOTTEST - COLDEST + 1];
        for (int i = 1; i < table.length; i++) {
            table[i] = table[i - 1] + SteelProperties.enthalpy(COLDEST + i - 1, COLDEST + i);
        }
        return table;
    }

    private static double[] byHeat() {
        double[] table = new double[NODES];
        int i = 0;
        for (int n = 0; n < NODES; n++) {
            double heat = MOST * n / (NODES - 1);
            while (i < BY_KELVIN.length - 2 && BY_KELVIN[i + 1] < heat) {
                i++;
            }
            table[n] = COLDEST + i + (heat - BY_KELVIN[i]) / (BY_KELVIN[i + 1] - BY_KELVIN[i]);
        }
        return table;
    }
}
