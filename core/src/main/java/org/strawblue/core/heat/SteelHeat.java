package org.strawblue.core.heat;

/**
 * Temperature T [K] and conduction potential θ = ∫ k dT [W/m] of steel by its heat y = h/c₀ [K], h its enthalpy [J/kg] above 150 K and
 * c₀ its specific heat at 400 K, so that y is nearly a temperature. Straight lines between entries even in y: the peak of the change at
 * 735 °C, where T hardly moves, is as finely divided as the rest. Beyond 150 to 1700 K the last slope goes on.
 */
public final class SteelHeat {

    private static final double SCALE = SteelProperties.DENSITY * SteelProperties.specificHeat(400);

    private static final int ENTRIES = 6000;
    private static final int COLDEST = 150;
    private static final int HOTTEST = 1700;

    /** Of each entry: T, dT/dy, θ, dθ/dy beside each other, so that one look fetches all. */
    private static final int WIDE = 4;

    private static final double[] TABLE = new double[WIDE * ENTRIES];
    private static final double STEP;
    private static final double PER;

    static {
        int n = HOTTEST - COLDEST;
        double[] y = new double[n + 1];
        double[] theta = new double[n + 1];
        for (int i = 1; i <= n; i++) {
            double t = COLDEST + i;
            y[i] = y[i - 1] + SteelProperties.DENSITY * SteelProperties.enthalpy(t - 1, t) / SCALE;
            theta[i] = theta[i - 1] + (SteelProperties.conductivity(t - 1) + SteelProperties.conductivity(t)) / 2;
        }
        STEP = y[n] / ENTRIES;
        PER = 1 / STEP;
        double kelvin = COLDEST;
        double potential = 0;
        int at = 0;
        for (int e = 0; e < ENTRIES; e++) {
            double next = (e + 1) * STEP;
            while (at < n - 1 && y[at + 1] < next) {
                at++;
            }
            double share = (next - y[at]) / (y[at + 1] - y[at]);
            double nextKelvin = COLDEST + at + share;
            double nextPotential = theta[at] + share * (theta[at + 1] - theta[at]);
            TABLE[WIDE * e] = kelvin;
            TABLE[WIDE * e + 1] = (nextKelvin - kelvin) * PER;
            TABLE[WIDE * e + 2] = potential;
            TABLE[WIDE * e + 3] = (nextPotential - potential) * PER;
            kelvin = nextKelvin;
            potential = nextPotential;
        }
    }

    private SteelHeat() {}

    /** ρ c₀: heat of a volume per unit of y [J/(m³·K)]. */
    public static double scale() {
        return SCALE;
    }

    /** T [K] */
    public static double kelvin(double y) {
        int e = entry(y);
        return TABLE[WIDE * e] + (y - e * STEP) * TABLE[WIDE * e + 1];
    }

    /** dT/dy, c₀ over the specific heat there. */
    public static double kelvinSlope(double y) {
        return TABLE[WIDE * entry(y) + 1];
    }

    /** T and θ of the first n. */
    public static void read(double[] y, int n, double[] kelvin, double[] potential) {
        for (int i = 0; i < n; i++) {
            int e = entry(y[i]);
            double beyond = y[i] - e * STEP;
            kelvin[i] = TABLE[WIDE * e] + beyond * TABLE[WIDE * e + 1];
            potential[i] = TABLE[WIDE * e + 2] + beyond * TABLE[WIDE * e + 3];
        }
    }

    /** dT/dy and dθ/dy of the first n. */
    public static void slopes(double[] y, int n, double[] kelvinSlope, double[] potentialSlope) {
        for (int i = 0; i < n; i++) {
            int e = entry(y[i]);
            kelvinSlope[i] = TABLE[WIDE * e + 1];
            potentialSlope[i] = TABLE[WIDE * e + 3];
        }
    }

    /** y at a temperature [K]. */
    public static double at(double kelvin) {
        int low = 0;
        int high = ENTRIES;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (TABLE[WIDE * middle] <= kelvin) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low * STEP + (kelvin - TABLE[WIDE * low]) / TABLE[WIDE * low + 1];
    }

    private static int entry(double y) {
        return Math.max(0, Math.min(ENTRIES - 1, (int) (y * PER)));
    }
}
