package org.strawblue.core.colour;

import org.strawblue.core.estimate.Constants;

/** The numbers of {@code constants.csv}. */
final class Figures {

    static final Constants ALL = Constants.of(Figures.class, "constants.csv");

    private Figures() {}

    static double number(String key) {
        return ALL.number(key);
    }

    /** The 3 × 3 matrix whose entries are {@code name_11} to {@code name_33}. */
    static double[][] matrix(String name) {
        double[][] m = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                m[i][j] = ALL.number(name + "_" + (i + 1) + (j + 1));
            }
        }
        return m;
    }
}
