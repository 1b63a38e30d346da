package org.strawblue.core.oxide;

import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** How well colour and time tell the temperature, by time at temperature, from {@code uncertainty.csv}. */
final class Uncertainty {

    private static final Row[] ROWS =
            Table.of(Uncertainty.class, "uncertainty.csv").rows().toArray(Row[]::new);
    private static final double SHORTEST = ROWS[0].number("time_s");
    private static final double LONGEST = ROWS[ROWS.length - 1].number("time_s");
    private static final PolynomialSplineFunction SD = spline();

    private Uncertainty() {}

    /** One standard deviation [K] after a time [s] at temperature. */
    static double sd(double seconds) {
        return SD.value(Math.log(Math.max(SHORTEST, Math.min(LONGEST, seconds))));
    }

    static Basis basis() {
        return new Basis(
                "scatter of colour against temperature", ROWS[0].text("source"), Standing.of(ROWS[0].text("standing")));
    }

    private static PolynomialSplineFunction spline() {
        double[] log = new double[ROWS.length];
        double[] sd = new double[ROWS.length];
        for (int i = 0; i < ROWS.length; i++) {
            log[i] = Math.log(ROWS[i].number("time_s"));
            sd[i] = ROWS[i].number("sd_K");
        }
        return new LinearInterpolator().interpolate(log, sd);
    }
}
