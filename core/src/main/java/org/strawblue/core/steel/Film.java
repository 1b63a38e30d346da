package org.strawblue.core.steel;

/**
 * Heat-transfer coefficient of a bath against the part's surface temperature, straight lines between the points of a
 * table, level beyond its ends.
 *
 * @param kelvin surface temperatures [K], rising
 * @param coefficient heat-transfer coefficients there [W/(m²·K)]
 */
@SuppressWarnings("ArrayRecordComponent") // copied in; never handed out
public record Film(double[] kelvin, double[] coefficient) {

    public Film {
        kelvin = kelvin.clone();
        coefficient = coefficient.clone();
        if (kelvin.length == 0 || kelvin.length != coefficient.length) {
            throw new IllegalArgumentException("a film needs as many temperatures as coefficients");
        }
    }

    /** [W/(m²·K)] at a surface temperature [K]. */
    public double at(double surface) {
        int last = kelvin.length - 1;
        if (surface <= kelvin[0]) {
            return coefficient[0];
        }
        for (int i = 1; i <= last; i++) {
            if (surface < kelvin[i]) {
                double share = (surface - kelvin[i - 1]) / (kelvin[i] - kelvin[i - 1]);
                return coefficient[i - 1] + share * (coefficient[i] - coefficient[i - 1]);
            }
        }
        return coefficient[last];
    }
}
