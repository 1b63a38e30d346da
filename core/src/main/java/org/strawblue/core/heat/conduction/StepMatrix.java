package org.strawblue.core.heat.conduction;

/** shift·I − J of a heat flow, factorised: a band, with a border of one row and column where the plate sags. */
final class StepMatrix {

    private final HeatFlow flow;
    private final Band jacobian;
    private final Band factors;
    private final double[] row;
    private final double[] column;
    private final double[] eliminated;
    private double corner;

    StepMatrix(HeatFlow flow) {
        this.flow = flow;
        this.jacobian = new Band(flow.nodes(), flow.bandwidth());
        this.factors = new Band(flow.nodes(), flow.bandwidth());
        this.row = new double[flow.nodes() + 1];
        this.column = new double[flow.nodes() + 1];
        this.eliminated = new double[flow.nodes()];
    }

    /** Takes the slopes at a state. */
    void linearise(double t, double[] y) {
        flow.jacobian(t, y, jacobian, row, column);
    }

    void factorise(double shift) {
        factors.shiftedNegative(jacobian, shift);
        factors.factorise();
        if (flow.sags()) {
            int n = flow.nodes();
            System.arraycopy(column, 0, eliminated, 0, n);
            factors.solve(eliminated);
            corner = shift - row[n];
            for (int i = 0; i < n; i++) {
                corner -= row[i] * eliminated[i];
            }
        }
    }

    /** Replaces the right-hand side by the solution. */
    void solve(double[] b) {
        factors.solve(b);
        if (flow.sags()) {
            int n = flow.nodes();
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
}
