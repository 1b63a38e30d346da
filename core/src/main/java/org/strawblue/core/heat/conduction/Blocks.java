package org.strawblue.core.heat.conduction;

import java.util.Arrays;

/**
 * The symmetric matrix of conduction over a mesh of columns, solved column by column: within a column each node is linked to the next,
 * and to its like in the next column. With S₀ = T₀ and S_k = T_k − E_{k−1} S_{k−1}⁻¹ E_{k−1}, T_k the column's own matrix and E its links to
 * the next, all that is left are products with the dense S_k⁻¹. No pivoting: each diagonal outweighs the rest of its row.
 *
 * <p>All loops run over rows that begin at the same index, which the compiler turns into vector instructions.
 */
final class Blocks {

    private static final int FOUR = 4;

    private final int rows;
    private final int columns;
    private final double[][] along;
    private final double[][] across;
    private final double[][][] inverse;
    private final double[][] x;
    private final double[] scratch;

    /** @param along link of each node to the next in its column, 0 at its end; {@code across} to its like in the next column */
    Blocks(int rows, double[] along, double[] across) {
        this.rows = rows;
        this.columns = along.length / rows;
        this.along = byColumn(along);
        this.across = byColumn(across);
        this.inverse = new double[columns][rows][rows];
        this.x = new double[columns][rows];
        this.scratch = new double[rows];
    }

    private double[][] byColumn(double[] all) {
        double[][] parts = new double[columns][];
        Arrays.setAll(parts, k -> Arrays.copyOfRange(all, k * rows, (k + 1) * rows));
        return parts;
    }

    /** Takes the diagonal. */
    void factorise(double[] diagonal) {
        for (int k = 0; k < columns; k++) {
            double[][] block = inverse[k];
            for (int i = 0; i < rows; i++) {
                double[] row = block[i];
                if (k == 0) {
                    Arrays.fill(row, 0);
                } else {
                    carry(row, inverse[k - 1][i], across[k - 1], -across[k - 1][i]);
                }
                row[i] += diagonal[k * rows + i];
                if (i > 0) {
                    row[i - 1] -= along[k][i - 1];
                }
                if (i + 1 < rows) {
                    row[i + 1] -= along[k][i];
                }
            }
            invert(block);
        }
    }

    private void carry(double[] row, double[] before, double[] link, double factor) {
        for (int c = 0; c < rows; c++) {
            row[c] = factor * link[c] * before[c];
        }
    }

    /** In place by Gauss and Jordan, four pivots at a time. */
    private void invert(double[][] a) {
        int k = 0;
        for (; k + FOUR <= rows; k += FOUR) {
            for (int p = k; p < k + FOUR; p++) {
                pivot(a, p, k, k + FOUR);
            }
            for (int i = 0; i < rows; i++) {
                if (i < k || i >= k + FOUR) {
                    clear(a[i], k, a[k], a[k + 1], a[k + 2], a[k + 3]);
                }
            }
        }
        for (; k < rows; k++) {
            pivot(a, k, 0, rows);
        }
    }

    /** Scales row p and clears its column in the rows from one to another. */
    private void pivot(double[][] a, int p, int from, int to) {
        double[] pivot = a[p];
        double inverse = 1 / pivot[p];
        pivot[p] = 1;
        for (int c = 0; c < rows; c++) {
            pivot[c] *= inverse;
        }
        for (int i = from; i < to; i++) {
            if (i != p) {
                double factor = a[i][p];
                a[i][p] = 0;
                add(a[i], -factor, pivot);
            }
        }
    }

    private void clear(double[] row, int k, double[] p, double[] q, double[] r, double[] s) {
        double f = row[k];
        double g = row[k + 1];
        double h = row[k + 2];
        double l = row[k + 3];
        row[k] = 0;
        row[k + 1] = 0;
        row[k + 2] = 0;
        row[k + 3] = 0;
        addFour(row, -f, p, -g, q, -h, r, -l, s);
    }

    /** Replaces the right-hand side by the solution; the matrix must be factorised. */
    void solve(double[] b) {
        for (int k = 0; k < columns; k++) {
            System.arraycopy(b, k * rows, scratch, 0, rows);
            if (k > 0) {
                addProduct(scratch, across[k - 1], x[k - 1]);
            }
            Arrays.fill(x[k], 0);
            addTimes(x[k], inverse[k], scratch);
        }
        for (int k = columns - 1; k >= 0; k--) {
            if (k < columns - 1) {
                Arrays.fill(scratch, 0);
                addProduct(scratch, across[k], x[k + 1]);
                addTimes(x[k], inverse[k], scratch);
            }
            System.arraycopy(x[k], 0, b, k * rows, rows);
        }
    }

    private void addProduct(double[] to, double[] f, double[] g) {
        for (int c = 0; c < rows; c++) {
            to[c] += f[c] * g[c];
        }
    }

    /** to += a b, a symmetric */
    private void addTimes(double[] to, double[][] a, double[] b) {
        int k = 0;
        for (; k + FOUR <= rows; k += FOUR) {
            addFour(to, b[k], a[k], b[k + 1], a[k + 1], b[k + 2], a[k + 2], b[k + 3], a[k + 3]);
        }
        for (; k < rows; k++) {
            add(to, b[k], a[k]);
        }
    }

    private void add(double[] to, double f, double[] p) {
        for (int c = 0; c < rows; c++) {
            to[c] += f * p[c];
        }
    }

    private void addFour(
            double[] to, double f, double[] p, double g, double[] q, double h, double[] r, double l, double[] s) {
        for (int c = 0; c < rows; c++) {
            to[c] += f * p[c] + g * q[c] + (h * r[c] + l * s[c]);
        }
    }
}
