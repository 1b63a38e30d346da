package org.strawblue.core.colour;

/** The little of 3 × 3 matrices that colours need; the library's decompositions take too long to start for it. */
final class Matrix3 {

    private Matrix3() {}

    static double[] times(double[][] m, double[] v) {
        double[] out = new double[3];
        for (int i = 0; i < 3; i++) {
            out[i] = m[i][0] * v[0] + m[i][1] * v[1] + m[i][2] * v[2];
        }
        return out;
    }

    /** The matrix whose columns are M times the columns of N. */
    static double[][] times(double[][] m, double[][] n) {
        double[][] out = new double[3][3];
        for (int j = 0; j < 3; j++) {
            double[] column = times(m, new double[] {n[0][j], n[1][j], n[2][j]});
            for (int i = 0; i < 3; i++) {
                out[i][j] = column[i];
            }
        }
        return out;
    }

    static double[][] diagonal(double[] v) {
        return new double[][] {{v[0], 0, 0}, {0, v[1], 0}, {0, 0, v[2]}};
    }

    /** By cofactors, whose indices go round: after 2 comes 0. */
    static double[][] inverse(double[][] m) {
        double[][] out = new double[3][3];
        double determinant = 0;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                out[j][i] = cofactor(m, i, j);
            }
            determinant += m[0][i] * cofactor(m, 0, i);
        }
        for (double[] row : out) {
            for (int j = 0; j < 3; j++) {
                row[j] /= determinant;
            }
        }
        return out;
    }

    private static double cofactor(double[][] m, int i, int j) {
        int a = (i + 1) % 3;
        int b = (i + 2) % 3;
        int c = (j + 1) % 3;
        int d = (j + 2) % 3;
        return m[a][c] * m[b][d] - m[a][d] * m[b][c];
    }
}
