package org.strawblue.core.heat.conduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The solve column by column against Hipparchus's dense LU decomposition. */
class BlocksTest {

    @ParameterizedTest(name = "{0} columns of {1}")
    @CsvSource({"1, 1", "1, 7", "9, 1", "2, 3", "5, 4", "6, 14", "3, 28"})
    void solvesWhatADenseDecompositionSolves(int columns, int rows) {
        SplittableRandom random = new SplittableRandom(7);
        int n = columns * rows;
        double[] along = new double[n];
        double[] across = new double[n];
        double[] diagonal = new double[n];
        for (int i = 0; i < n; i++) {
            along[i] = (i + 1) % rows == 0 ? 0 : Math.exp(4 * random.nextDouble() - 2);
            across[i] = i >= n - rows ? 0 : Math.exp(4 * random.nextDouble() - 2);
        }
        double[][] dense = new double[n][n];
        for (int i = 0; i < n; i++) {
            link(dense, i, i + 1, along[i]);
            link(dense, i, i + rows, across[i]);
        }
        for (int i = 0; i < n; i++) {
            dense[i][i] += 0.01 + random.nextDouble();
            diagonal[i] = dense[i][i];
        }
        double[] b = random.doubles(n, -1, 1).toArray();
        double[] expected = new LUDecomposition(new Array2DRowRealMatrix(dense))
                .getSolver()
                .solve(new ArrayRealVector(b))
                .toArray();

        Blocks blocks = new Blocks(rows, along, across);
        // what an earlier factorisation left must not be seen
        blocks.factorise(Arrays.stream(diagonal).map(d -> 3 * d).toArray());
        blocks.factorise(diagonal);
        blocks.solve(b);

        double most = Arrays.stream(expected).map(Math::abs).max().orElseThrow();
        assertThat(b).containsExactly(expected, within(1e-11 * most));
    }

    private static void link(double[][] dense, int a, int b, double factor) {
        if (factor != 0) {
            dense[a][a] += factor;
            dense[b][b] += factor;
            dense[a][b] -= factor;
            dense[b][a] -= factor;
        }
    }
}
