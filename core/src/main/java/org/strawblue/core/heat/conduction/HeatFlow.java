package org.strawblue.core.heat.conduction;

import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.heat.course.Air;

/**
 * ρ c dT/dt = ∇·(k ∇T) over a mesh in one setting, as equations for the enthalpy of each node: V dH/dt = Σ g (θ_neighbour − θ)
 * + Σ patches A q(T, t). A plate that sags is one more unknown, its temperature.
 */
final class HeatFlow {

    private static final double SIGMA = SteelProperties.STEFAN_BOLTZMANN;
    private static final double BLEND = Figures.SHARED.si("blend-length", org.strawblue.core.quantity.Dimension.LENGTH);
    private static final double NUDGE = 0.05;

    private final Mesh mesh;
    private final Surroundings surroundings;
    private final int rows;
    private final int nodes;
    private final double[] capacity;
    private final double[] gap;
    private final double[] plateView;
    private final double[] wallArea;
    private final double[] filmArea;
    private final int[] node;
    private final double[] depth;
    private final double[] constriction;
    private final int[] zone;
    private final double[] gas;
    private final double[] wallsFourth;

    private final double[] kelvin;
    private final double[] potential;
    private final double[] power;

    HeatFlow(Mesh mesh, Surroundings surroundings) {
        this.mesh = mesh;
        this.surroundings = surroundings;
        this.rows = mesh.rows();
        this.nodes = mesh.size();
        this.capacity = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            capacity[i] = mesh.volume()[i] * SteelHeat.scale();
        }
        int n = mesh.patches().length;
        this.gap = new double[n];
        this.plateView = new double[n];
        this.wallArea = new double[n];
        this.filmArea = new double[n];
        this.node = new int[n];
        this.depth = new double[n];
        this.constriction = new double[n];
        this.zone = new int[n];
        this.gas = new double[surroundings.zones().size()];
        this.wallsFourth = new double[gas.length];
        this.kelvin = new double[nodes];
        this.potential = new double[nodes];
        this.power = new double[nodes];
        for (int p = 0; p < n; p++) {
            expose(p, mesh.patches()[p]);
        }
    }

    private void expose(int p, Mesh.Patch patch) {
        boolean inside = patch.viewOfPlate() < 0;
        node[p] = patch.node();
        depth[p] = patch.depth();
        constriction[p] = patch.constriction();
        double emissivity = surroundings.zones().get(0).emissivity();
        double area = patch.area();
        if (surroundings.on().isPresent()) {
            double nearest = surroundings.on().get().gap();
            double height = nearest + patch.clearance();
            // no heat to speak of goes out of a bore that lies on a plate
            double view = inside ? 0 : patch.viewOfPlate();
            double near = inside ? 1 : 1 / (1 + Math.pow(height / BLEND, 4));
            gap[p] = patch.gapLength().at(nearest);
            plateView[p] = area * view * surroundings.plateExchange() * (inside ? 0 : 1);
            wallArea[p] = inside ? 0 : area * (1 - view) * emissivity;
            filmArea[p] = area * (1 - near);
        } else {
            wallArea[p] = area * emissivity;
            filmArea[p] = area;
        }
        if (surroundings.zones().size() == 2) {
            double middle = (patch.from() + patch.to()) / 2;
            boolean there = middle >= surroundings.from() && middle < surroundings.to();
            zone[p] = there ? 0 : 1;
            wallArea[p] = area * surroundings.zones().get(zone[p]).emissivity();
        }
    }

    /** Unknowns: a y for each node, and the plate's temperature where it sags. */
    int size() {
        return surroundings.sags() ? nodes + 1 : nodes;
    }

    int nodes() {
        return nodes;
    }

    int bandwidth() {
        return rows == nodes ? 1 : rows;
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
        for (int i = 0; i < nodes; i++) {
            kelvin[i] = SteelHeat.kelvin(y[i]);
            potential[i] = SteelHeat.potential(y[i]);
            power[i] = 0;
        }
        conduct();
        double plate = plate(t, y);
        around(t);
        double plateFourth = fourth(plate);
        double total = 0;
        double fromPlate = 0;
        for (int p = 0; p < gap.length; p++) {
            double here = kelvin[node[p]];
            double in = fromPlate(p, here, plate, plateFourth);
            fromPlate += in;
            in += fromAround(p, here);
            power[node[p]] += in;
            total += in;
        }
        for (int i = 0; i < nodes; i++) {
            rate[i] = power[i] / capacity[i];
        }
        if (surroundings.sags()) {
            rate[nodes] =
                    (surroundings.recovery() * (surroundings.plate(t) - plate) - fromPlate) / surroundings.capacity();
        }
        return total;
    }

    /** What the zones are at now. */
    private void around(double t) {
        for (int z = 0; z < gas.length; z++) {
            Zone around = surroundings.zones().get(z);
            gas[z] = around.gas().applyAsDouble(t);
            wallsFourth[z] = fourth(around.walls().applyAsDouble(t));
        }
    }

    private double plate(double t, double[] y) {
        return surroundings.sags() ? y[nodes] : surroundings.plate(t);
    }

    private void conduct() {
        double[] along = mesh.along();
        double[] across = mesh.across();
        for (int i = 0; i < nodes; i++) {
            if (along[i] != 0) {
                double flow = along[i] * (potential[i + 1] - potential[i]);
                power[i] += flow;
                power[i + 1] -= flow;
            }
            if (across[i] != 0) {
                double flow = across[i] * (potential[i + rows] - potential[i]);
                power[i] += flow;
                power[i + rows] -= flow;
            }
        }
    }

    /** [W] from the plate through the gap and by radiation. */
    private double fromPlate(int p, double t, double plate, double plateFourth) {
        double power = 0;
        if (gap[p] != 0) {
            double conductance = Air.conductivity((plate + t) / 2) * gap[p];
            if (constriction[p] != 0) {
                conductance /= 1 + conductance * constriction[p] / SteelProperties.conductivity(t);
            }
            power += conductance * (plate - t);
        }
        if (plateView[p] != 0) {
            power += plateView[p] * SIGMA * (plateFourth - fourth(t));
        }
        return power;
    }

    /** [W] from air, walls, flame or bath. */
    private double fromAround(int p, double t) {
        int z = zone[p];
        double film = surroundings.zones().get(z).film().at(t);
        double power = filmArea[p] * film * (gas[z] - t) + wallArea[p] * SIGMA * (wallsFourth[z] - fourth(t));
        return depth[p] == 0 ? power : power / (1 + film * depth[p] / SteelProperties.conductivity(t));
    }

    private static double fourth(double t) {
        double square = t * t;
        return square * square;
    }

    /** ∂(dy/dt)/∂y at the state {@link #rate} was last asked about; row and column of a sagging plate apart. */
    void jacobian(double t, double[] y, Band band, double[] plateRow, double[] plateColumn) {
        band.clear();
        double[] along = mesh.along();
        double[] across = mesh.across();
        for (int i = 0; i < nodes; i++) {
            link(band, y, i, i + 1, along[i]);
            link(band, y, i, i + rows, across[i]);
        }
        java.util.Arrays.fill(plateRow, 0);
        java.util.Arrays.fill(plateColumn, 0);
        double plate = plate(t, y);
        around(t);
        double plateFourth = fourth(plate);
        double loss = surroundings.recovery();
        for (int p = 0; p < gap.length; p++) {
            int i = node[p];
            double here = kelvin[i];
            double slope = SteelHeat.kelvinSlope(y[i]);
            double given = fromPlate(p, here, plate, plateFourth);
            double byPart = (fromPlate(p, here + NUDGE, plate, plateFourth) - given) / NUDGE;
            double byAround = (fromAround(p, here + NUDGE) - fromAround(p, here)) / NUDGE;
            band.add(i, i, (byPart + byAround) * slope / capacity[i]);
            if (surroundings.sags()) {
                double byPlate = (fromPlate(p, here, plate + NUDGE, fourth(plate + NUDGE)) - given) / NUDGE;
                plateColumn[i] += byPlate / capacity[i];
                plateRow[i] -= byPart * slope / surroundings.capacity();
                loss += byPlate;
            }
        }
        if (surroundings.sags()) {
            plateRow[nodes] = -loss / surroundings.capacity();
        }
    }

    private void link(Band band, double[] y, int a, int b, double factor) {
        if (factor != 0) {
            double fromA = factor * SteelHeat.potentialSlope(y[a]);
            double fromB = factor * SteelHeat.potentialSlope(y[b]);
            band.add(a, a, -fromA / capacity[a]);
            band.add(a, b, fromB / capacity[a]);
            band.add(b, b, -fromB / capacity[b]);
            band.add(b, a, fromA / capacity[b]);
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
