package org.strawblue.core.heat.conduction;

/** Places of nodes between two ends, both of them nodes. */
final class Spacing {

    private Spacing() {}

    /** {@code n + 1} nodes from {@code from} to {@code to}, each interval {@code ratio^(1/n)} times the one before. */
    static double[] graded(double from, double to, int n, double ratio) {
        double factor = Math.pow(ratio, 1.0 / n);
        double[] at = new double[n + 1];
        double step = 1;
        for (int i = 1; i <= n; i++) {
            at[i] = at[i - 1] + step;
            step *= factor;
        }
        for (int i = 0; i <= n; i++) {
            at[i] = from + (to - from) * at[i] / at[n];
        }
        at[n] = to;
        return at;
    }

    /** Borders of the nodes' own cells: half-way between nodes, and both ends. */
    static double[] borders(double[] nodes) {
        double[] borders = new double[nodes.length + 1];
        borders[0] = nodes[0];
        for (int i = 1; i < nodes.length; i++) {
            borders[i] = (nodes[i - 1] + nodes[i]) / 2;
        }
        borders[nodes.length] = nodes[nodes.length - 1];
        return borders;
    }
}
