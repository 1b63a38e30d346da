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
    private final double[] inverse;

    Band(int size, int width) {
        this.size = size;
        this.width = width;
        this.row = 2 * width + 1;
        this.a = new double[size * row];
        this.inverse = new double[size];
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

    /** Replaces the matrix by its factors L and U, row by row, four pivots at a time. */
    void factorise() {
        for (int i = 0; i < size; i++) {
            int here = i * row + width - i;
            int k = Math.max(0, i - width);
            for (; k + 4 <= i; k += 4) {
                eliminateFour(here, k);
            }
            for (; k < i; k++) {
                eliminate(here, k);
            }
            inverse[i] = 1 / a[here + i];
        }
    }

    private void eliminate(int here, int k) {
        double factor = a[here + k] * inverse[k];
        a[here + k] = factor;
        int pivot = k * row + width - k;
        int last = Math.min(size - 1, k + width);
        for (int c = k + 1; c <= last; c++) {
            a[here + c] -= factor * a[pivot + c];
        }
    }

    /** Rows k to k + 3 at once: each entry of the row is fetched and put back once for four. */
    private void eliminateFour(int here, int k) {
        int first = k * row + width - k;
        int second = first + row - 1;
        int third = second + row - 1;
        int fourth = third + row - 1;
        double f = a[here + k] * inverse[k];
        double g = (a[here + k + 1] - f * a[first + k + 1]) * inverse[k + 1];
        double p = (a[here + k + 2] - f * a[first + k + 2] - g * a[second + k + 2]) * inverse[k + 2];
        double q = (a[here + k + 3] - f * a[first + k + 3] - g * a[second + k + 3] - p * a[third + k + 3])
                * inverse[k + 3];
        a[here + k] = f;
        a[here + k + 1] = g;
        a[here + k + 2] = p;
        a[here + k + 3] = q;
        int last = Math.min(size - 1, k + width);
        for (int c = k + 4; c <= last; c++) {
            a[here + c] -= f * a[first + c] + g * a[second + c] + (p * a[third + c] + q * a[fourth + c]);
        }
        // the rows end one after the other
        beyond(here, second, g, last + 1, k + 1);
        beyond(here, third, p, last + 1, k + 2);
        beyond(here, fourth, q, last + 1, k + 3);
    }

    private void beyond(int here, int pivot, double factor, int from, int k) {
        int last = Math.min(size - 1, k + width);
        for (int c = from; c <= last; c++) {
            a[here + c] -= factor * a[pivot + c];
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
            b[i] = (b[i] - product(at, b, i + 1, to)) * inverse[i];
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
