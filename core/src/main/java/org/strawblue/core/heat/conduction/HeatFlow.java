package org.strawblue.core.heat.conduction;

import java.util.Arrays;
import org.strawblue.core.heat.SteelHeat;

/**
 * ρ c dT/dt = ∇·(k ∇T) over a mesh in one setting, as equations for the heat y of each node: C dy/dt = Σ g (θ_neighbour − θ)
 * + power through the surface. A plate that sags is one more unknown, its temperature.
 */
final class HeatFlow {

    private final Surroundings surroundings;
    private final Exchange exchange;
    private final int rows;
    private final int nodes;
    private final double[] along;
    private final double[] across;
    private final double[] capacity;

    private final double[] kelvin;
    private final double[] potential;
    private final double[] power;
    private final double[] kelvinSlope;
    private final double[] byPlate;
    private final double[] platesShare;

    HeatFlow(Mesh mesh, Surroundings surroundings) {
        this.surroundings = surroundings;
        this.exchange = new Exchange(mesh, surroundings);
        this.rows = mesh.rows();
        this.nodes = mesh.size();
        this.along = mesh.along();
        this.across = mesh.across();
        this.capacity =
                Arrays.stream(mesh.volume()).map(v -> v * SteelHeat.scale()).toArray();
        this.kelvin = new double[nodes];
        this.potential = new double[nodes];
        this.power = new double[nodes];
        this.kelvinSlope = new double[nodes];
        this.byPlate = new double[nodes];
        this.platesShare = new double[nodes];
    }

    /** Unknowns: a y for each node, and the plate's temperature where it sags. */
    int size() {
        return surroundings.sags() ? nodes + 1 : nodes;
    }

    int nodes() {
        return nodes;
    }

    /** C, heat of each node per unit of y [J/K] */
    double[] capacity() {
        return capacity;
    }

    boolean steady() {
        return surroundings.steady();
    }

    double longestStep() {
        return surroundings.longestStep();
    }

    boolean sags() {
        return surroundings.sags();
    }

    /** dy/dt; returns the net power through the surface [W]. */
    double rate(double t, double[] y, double[] rate) {
        SteelHeat.read(y, nodes, kelvin, potential);
        conduct();
        double plate = plate(t, y);
        exchange.now(t, plate);
        double total = exchange.into(kelvin, power);
        for (int i = 0; i < nodes; i++) {
            rate[i] = power[i] / capacity[i];
        }
        if (surroundings.sags()) {
            double back = surroundings.recovery() * (surroundings.plate(t) - plate);
            rate[nodes] = (back - exchange.givenByPlate()) / surroundings.capacity();
        }
        return total;
    }

    private double plate(double t, double[] y) {
        return surroundings.sags() ? y[nodes] : surroundings.plate(t);
    }

    private void conduct() {
        double before = 0;
        for (int i = 0; i < nodes - 1; i++) {
            double flow = along[i] * (potential[i + 1] - potential[i]);
            power[i] = flow - before;
            before = flow;
        }
        power[nodes - 1] = -before;
        for (int i = 0; i < nodes - rows; i++) {
            double flow = across[i] * (potential[i + rows] - potential[i]);
            power[i] += flow;
            power[i + rows] -= flow;
        }
    }

    /**
     * Slopes at a state.
     *
     * @param weight dθ/dy of each node
     * @param surface slope of the power through its surface by its y [W/K]
     * @param plateRow slope of a sagging plate's own rate by each y and by its temperature; {@code plateColumn} of each dy/dt by its temperature
     */
    void slopes(double t, double[] y, double[] weight, double[] surface, double[] plateRow, double[] plateColumn) {
        SteelHeat.read(y, nodes, kelvin, potential);
        SteelHeat.slopes(y, nodes, kelvinSlope, weight);
        Arrays.fill(surface, 0);
        Arrays.fill(byPlate, 0);
        Arrays.fill(platesShare, 0);
        exchange.now(t, plate(t, y));
        exchange.slopesInto(kelvin, surface, platesShare, byPlate);
        double loss = surroundings.recovery();
        for (int i = 0; i < nodes; i++) {
            surface[i] *= kelvinSlope[i];
            if (surroundings.sags()) {
                plateRow[i] = -platesShare[i] * kelvinSlope[i] / surroundings.capacity();
                plateColumn[i] = byPlate[i] / capacity[i];
                loss += byPlate[i];
            }
        }
        if (surroundings.sags()) {
            plateRow[nodes] = -loss / surroundings.capacity();
        }
    }

    /** Heat in the part above that at y = 0 [J]. */
    double stored(double[] y) {
        double sum = 0;
        for (int i = 0; i < nodes; i++) {
            sum += y[i] * capacity[i];
        }
        return sum;
    }
}
