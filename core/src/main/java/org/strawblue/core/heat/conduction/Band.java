package org.strawblue.core.heat.conduction;

import java.util.Arrays;

/**
 * A square matrix with entries only within {@code width} of its diagonal, and its factors without pivoting, which the matrices
 * of conduction allow: each diagonal outweighs the rest of its row or column.
 */
final class Band {

    final int size;
    final int width;
    private final int row;
    private final double[] a;
    private final double[] pivotRow;

    Band(int size, int width) {
        this.size = size;
        this.width = width;
        this.row = 2 * width + 1;
        this.a = new double[size * row];
        this.pivotRow = new double[width];
    }

    void clear() {
        Arrays.fill(a, 0);
    }

    void add(int i, int j, double value) {
        a[i * row + j - i + width] += value;
    }

    /** Becomes shift·I − other. */
    void shiftedNegative(Band other, double shift) {
        for (int k = 0; k < a.length; k++) {
            a[k] = -other.a[k];
        }
        for (int i = 0; i < size; i++) {
            a[i * row + width] += shift;
        }
    }

    /** Replaces the matrix by its factors L and U. */
    void factorise() {
        for (int i = 0; i < size; i++) {
            int pivot = i * row + width;
            double inverse = 1 / a[pivot];
            int last = Math.min(size - 1, i + width);
            int columns = last - i;
            System.arraycopy(a, pivot + 1, pivotRow, 0, columns);
            for (int r = i + 1; r <= last; r++) {
                int at = r * row + width - (r - i);
                double factor = a[at] * inverse;
                a[at] = factor;
                if (factor != 0) {
                    subtract(at + 1, factor, columns);
                }
            }
        }
    }

    /** The pivot's row lies apart, so that the loop may run on several entries at once. */
    private void subtract(int at, double factor, int columns) {
        for (int c = 0; c < columns; c++) {
            a[at + c] -= factor * pivotRow[c];
        }
    }

    /** Replaces the right-hand side by the solution; the matrix must be factorised. */
    void solve(double[] b) {
        for (int i = 1; i < size; i++) {
            int from = Math.max(0, i - width);
            b[i] -= product(i * row + width - i, b, from, i);
        }
        for (int i = size - 1; i >= 0; i--) {
            int at = i * row + width - i;
            int to = Math.min(size, i + width + 1);
            b[i] = (b[i] - product(at, b, i + 1, to)) / a[at + i];
        }
    }

    /** Σ a[at + j] b[j], four sums side by side, since one alone waits for itself. */
    private double product(int at, double[] b, int from, int to) {
        double first = 0;
        double second = 0;
        double third = 0;
        double fourth = 0;
        int j = from;
        for (; j + 4 <= to; j += 4) {
            first += a[at + j] * b[j];
            second += a[at + j + 1] * b[j + 1];
            third += a[at + j + 2] * b[j + 2];
            fourth += a[at + j + 3] * b[j + 3];
        }
        for (; j < to; j++) {
            first += a[at + j] * b[j];
        }
        return first + second + (third + fourth);
    }
}
