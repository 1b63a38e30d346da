package org.strawblue.core.heat.conduction;

import java.util.function.DoubleUnaryOperator;

/** A heat-transfer coefficient [W/(m²·K)] by surface temperature [K], sampled evenly, straight lines between. */
final class FilmTable {

    private static final double FROM = 150;
    private static final double STEP = 5;
    private static final int LAST = 320;

    private final double[] coefficient = new double[LAST + 1];
    private final double[] slope = new double[LAST + 1];

    FilmTable(DoubleUnaryOperator film) {
        for (int i = 0; i <= LAST; i++) {
            coefficient[i] = film.applyAsDouble(FROM + i * STEP);
        }
        for (int i = 0; i < LAST; i++) {
            slope[i] = coefficient[i + 1] - coefficient[i];
        }
    }

    static FilmTable constant(double film) {
        return new FilmTable(t -> film);
    }

    double at(double kelvin) {
        double at = Math.max(0, Math.min(LAST, (kelvin - FROM) * (1 / STEP)));
        int i = (int) at;
        return coefficient[i] + (at - i) * slope[i];
    }
}
