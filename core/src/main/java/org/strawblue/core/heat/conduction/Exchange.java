package org.strawblue.core.heat.conduction;

import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.heat.course.Air;

/**
 * Power through the patches of a surface: h A (T_gas − T) + σ [F_p A_p (T_p⁴ − T⁴) + ε A (T_w⁴ − T⁴)], and through a gap from the plate
 * k_air G (T_p − T). The plain patches, without gap or depth, come first: they are many and their reckoning is short.
 */
final class Exchange {

    private static final double SIGMA = SteelProperties.STEFAN_BOLTZMANN;
    private static final double BLEND = Figures.SHARED.si("blend-length", org.strawblue.core.quantity.Dimension.LENGTH);
    /** Rise by which slopes are taken [K]: small beside the bends of the laws, large beside rounding. */
    private static final double NUDGE = 0.05;

    private final Surroundings surroundings;
    private final int count;
    private final int plain;
    private final int[] node;
    private final int[] zone;
    private final double[] gap;
    private final double[] film;
    private final double[] toPlate;
    private final double[] toWalls;
    private final double[] depth;
    private final double[] constriction;

    private final FilmTable[] films;
    private final double[] gas;
    private final double[] wallsFourth;
    private double plate;
    private double plateFourth;
    private double givenByPlate;

    Exchange(Mesh mesh, Surroundings surroundings) {
        this.surroundings = surroundings;
        this.count = mesh.patches().length;
        this.node = new int[count];
        this.zone = new int[count];
        this.gap = new double[count];
        this.film = new double[count];
        this.toPlate = new double[count];
        this.toWalls = new double[count];
        this.depth = new double[count];
        this.constriction = new double[count];
        this.films = surroundings.zones().stream().map(Zone::film).toArray(FilmTable[]::new);
        this.gas = new double[films.length];
        this.wallsFourth = new double[films.length];
        int first = 0;
        int last = count;
        for (Mesh.Patch patch : mesh.patches()) {
            expose(plain(patch) ? first++ : --last, patch);
        }
        this.plain = first;
    }

    private boolean plain(Mesh.Patch patch) {
        return gap(patch) == 0 && patch.depth() == 0 && films.length == 1 && !surroundings.sags();
    }

    private double gap(Mesh.Patch patch) {
        return surroundings.on().map(on -> patch.gapLength().at(on.gap())).orElse(0.0);
    }

    private void expose(int p, Mesh.Patch patch) {
        boolean inside = patch.viewOfPlate() < 0;
        boolean lies = surroundings.on().isPresent();
        double area = patch.area();
        node[p] = patch.node();
        depth[p] = patch.depth();
        constriction[p] = patch.constriction();
        double middle = (patch.from() + patch.to()) / 2;
        boolean there = middle >= surroundings.from() && middle < surroundings.to();
        zone[p] = films.length == 1 || there ? 0 : 1;
        double emissivity = surroundings.zones().get(zone[p]).emissivity();
        // no heat to speak of goes out of a bore that lies on a plate
        double view = lies && !inside ? patch.viewOfPlate() : 0;
        toPlate[p] = SIGMA * area * view * surroundings.plateExchange();
        toWalls[p] = lies && inside ? 0 : SIGMA * area * (1 - view) * emissivity;
        film[p] = lies ? area * away(patch, inside) : area;
        gap[p] = gap(patch);
    }

    /** How far a patch is from having the plate's air alone about it, 0 to 1. */
    private double away(Mesh.Patch patch, boolean inside) {
        if (inside || !Double.isFinite(patch.clearance())) {
            return inside ? 0 : 1;
        }
        double height = surroundings.on().orElseThrow().gap() + patch.clearance();
        return 1 - 1 / (1 + fourth(height / BLEND));
    }

    /** What surrounds the part now, the plate at this temperature [K]. */
    void now(double t, double plateNow) {
        for (int z = 0; z < gas.length; z++) {
            Zone around = surroundings.zones().get(z);
            gas[z] = around.gas().applyAsDouble(t);
            wallsFourth[z] = fourth(around.walls().applyAsDouble(t));
        }
        plate = plateNow;
        plateFourth = fourth(plateNow);
    }

    /** Adds to the power of each node [W]; returns the sum. */
    double into(double[] kelvin, double[] power) {
        double total = 0;
        for (int p = 0; p < plain; p++) {
            double in = plain(p, kelvin[node[p]]);
            power[node[p]] += in;
            total += in;
        }
        givenByPlate = 0;
        for (int p = plain; p < count; p++) {
            double here = kelvin[node[p]];
            double given = fromPlate(p, here, plate, plateFourth);
            double in = given + fromAround(p, here);
            power[node[p]] += in;
            givenByPlate += given;
            total += in;
        }
        return total;
    }

    /** What of it came from a plate that sags [W]. */
    double givenByPlate() {
        return givenByPlate;
    }

    /** Adds to each node the slope of its power by its own temperature [W/K], and where the plate sags, by the plate's. */
    void slopesInto(double[] kelvin, double[] byPart, double[] byPlatesShare, double[] byPlate) {
        for (int p = 0; p < plain; p++) {
            double here = kelvin[node[p]];
            byPart[node[p]] += (plain(p, here + NUDGE) - plain(p, here)) / NUDGE;
        }
        double warmer = fourth(plate + NUDGE);
        for (int p = plain; p < count; p++) {
            int i = node[p];
            double here = kelvin[i];
            double given = fromPlate(p, here, plate, plateFourth);
            double share = (fromPlate(p, here + NUDGE, plate, plateFourth) - given) / NUDGE;
            byPart[i] += share + (fromAround(p, here + NUDGE) - fromAround(p, here)) / NUDGE;
            if (surroundings.sags()) {
                byPlatesShare[i] += share;
                byPlate[i] += (fromPlate(p, here, plate + NUDGE, warmer) - given) / NUDGE;
            }
        }
    }

    private double plain(int p, double t) {
        double radiated =
                toPlate[p] * plateFourth + toWalls[p] * wallsFourth[0] - (toPlate[p] + toWalls[p]) * fourth(t);
        return radiated + film[p] * films[0].at(t) * (gas[0] - t);
    }

    private double fromPlate(int p, double t, double plateNow, double fourthNow) {
        double power = toPlate[p] * (fourthNow - fourth(t));
        if (gap[p] != 0) {
            double conductance = Air.conductivity((plateNow + t) / 2) * gap[p];
            if (constriction[p] != 0) {
                conductance /= 1 + conductance * constriction[p] / SteelProperties.conductivity(t);
            }
            power += conductance * (plateNow - t);
        }
        return power;
    }

    /** From air, walls, flame or bath. */
    private double fromAround(int p, double t) {
        int z = zone[p];
        double coefficient = films[z].at(t);
        double power = film[p] * coefficient * (gas[z] - t) + toWalls[p] * (wallsFourth[z] - fourth(t));
        return depth[p] == 0 ? power : power / (1 + coefficient * depth[p] / SteelProperties.conductivity(t));
    }

    private static double fourth(double t) {
        double square = t * t;
        return square * square;
    }
}
