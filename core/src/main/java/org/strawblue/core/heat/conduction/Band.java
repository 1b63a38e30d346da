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

    Band(int size, int width) {
        this.size = size;
        this.width = width;
        this.row = 2 * width + 1;
        this.a = new double[size * row];
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
            for (int r = i + 1; r <= last; r++) {
                int at = r * row + width - (r - i);
                double factor = a[at] * inverse;
                a[at] = factor;
                if (factor != 0) {
                    for (int c = 1; c <= columns; c++) {
                        a[at + c] -= factor * a[pivot + c];
                    }
                }
            }
        }
    }

    /** Replaces the right-hand side by the solution; the matrix must be factorised. */
    void solve(double[] b) {
        for (int i = 0; i < size; i++) {
            double sum = b[i];
            int from = Math.max(0, i - width);
            int at = i * row + width - i;
            for (int j = from; j < i; j++) {
                sum -= a[at + j] * b[j];
            }
            b[i] = sum;
        }
        for (int i = size - 1; i >= 0; i--) {
            double sum = b[i];
            int to = Math.min(size - 1, i + width);
            int at = i * row + width - i;
            for (int j = i + 1; j <= to; j++) {
                sum -= a[at + j] * b[j];
            }
            b[i] = sum / a[at + i];
        }
    }
}
