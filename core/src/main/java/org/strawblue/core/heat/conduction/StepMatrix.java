package org.strawblue.core.heat.conduction;

/**
 * shift·I − J of a heat flow. With C the capacities, K the links, W = dθ/dy and s the slope of the power through the surface,
 * C J = K W + s, so that (shift·C − s)/W − K is symmetric, its unknown W u and its right-hand side C b; only its diagonal changes with
 * the state. Where the plate sags, a border of one row and column.
 */
final class StepMatrix {

    private final HeatFlow flow;
    private final int n;
    private final Blocks blocks;
    private final double[] links;
    private final double[] capacity;
    private final double[] weight;
    private final double[] surface;
    private final double[] diagonal;
    private final double[] row;
    private final double[] column;
    private final double[] eliminated;
    private double corner;

    StepMatrix(HeatFlow flow, Mesh mesh) {
        this.flow = flow;
        this.n = flow.nodes();
        this.blocks = new Blocks(mesh.rows(), mesh.along(), mesh.across());
        this.links = new double[n];
        this.capacity = flow.capacity();
        this.weight = new double[n];
        this.surface = new double[n];
        this.diagonal = new double[n];
        this.row = new double[n + 1];
        this.column = new double[n + 1];
        this.eliminated = new double[n];
        for (int i = 0; i < n; i++) {
            link(i, i + 1, mesh.along()[i]);
            link(i, i + mesh.rows(), mesh.across()[i]);
        }
    }

    private void link(int a, int b, double factor) {
        if (factor != 0) {
            links[a] += factor;
            links[b] += factor;
        }
    }

    /** Takes the slopes at a state. */
    void linearise(double t, double[] y) {
        flow.slopes(t, y, weight, surface, row, column);
    }

    void factorise(double shift) {
        for (int i = 0; i < n; i++) {
            diagonal[i] = (shift * capacity[i] - surface[i]) / weight[i] + links[i];
        }
        blocks.factorise(diagonal);
        if (flow.sags()) {
            System.arraycopy(column, 0, eliminated, 0, n);
            inner(eliminated);
            corner = shift - row[n];
            for (int i = 0; i < n; i++) {
                corner -= row[i] * eliminated[i];
            }
        }
    }

    /** Replaces the right-hand side by the solution. */
    void solve(double[] b) {
        inner(b);
        if (flow.sags()) {
            double plate = b[n];
            for (int i = 0; i < n; i++) {
                plate += row[i] * b[i];
            }
            plate /= corner;
            b[n] = plate;
            for (int i = 0; i < n; i++) {
                b[i] += eliminated[i] * plate;
            }
        }
    }

    private void inner(double[] b) {
        for (int i = 0; i < n; i++) {
            b[i] *= capacity[i];
        }
        blocks.solve(b);
        for (int i = 0; i < n; i++) {
            b[i] /= weight[i];
        }
    }
}
