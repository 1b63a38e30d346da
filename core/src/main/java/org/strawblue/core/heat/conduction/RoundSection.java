package org.strawblue.core.heat.conduction;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.strawblue.core.heat.conduction.Mesh.GapLength;
import org.strawblue.core.heat.conduction.Mesh.Patch;
import org.strawblue.core.heat.course.SectionGrid;
import org.strawblue.core.history.Place;

/**
 * The section of a round bar or tube: half of it, by angle from the underside and radius, where it lies on a plate; along one
 * radius, where it is heated or cooled all round. What its ends take is given to the whole section.
 */
final class RoundSection {

    private final double hole;
    private final double radius;
    private final double length;
    private final int sectors;
    private final int rings;
    private final double[] angle;
    private final double[] angleBorder;
    private final double[] r;
    private final double[] rBorder;

    private RoundSection(double hole, double radius, double length, int sectors, int rings) {
        this.hole = hole;
        this.radius = radius;
        this.length = length;
        this.sectors = sectors;
        this.rings = rings;
        // finest where the heat comes in
        this.angle = sectors == 1 ? new double[] {Math.PI / 2} : Spacing.graded(0, Math.PI, sectors - 1, 8);
        this.angleBorder = sectors == 1 ? new double[] {0, Math.PI} : Spacing.borders(angle);
        // no node in the very middle, where the sectors would meet: the innermost cells are as good as one
        double inner = hole > 0 ? hole : radius / (2.0 * rings);
        this.r = Spacing.graded(inner, radius, rings - 1, 1.0 / 8);
        this.rBorder = Spacing.borders(r);
        if (hole == 0) {
            rBorder[0] = 0;
        }
    }

    static Mesh onPlate(double hole, double radius, double length, Fineness fineness) {
        return new RoundSection(hole, radius, length, fineness.sectors(), fineness.rings()).mesh();
    }

    static Mesh allRound(double hole, double radius, double length, Fineness fineness) {
        return new RoundSection(hole, radius, length, 1, fineness.rings() * 2).mesh();
    }

    private Mesh mesh() {
        int n = sectors * rings;
        double[] volume = new double[n];
        double[] along = new double[n];
        double[] across = new double[n];
        List<Patch> patches = new ArrayList<>();
        for (int s = 0; s < sectors; s++) {
            double width = 2 * (angleBorder[s + 1] - angleBorder[s]);
            for (int k = 0; k < rings; k++) {
                int node = s * rings + k;
                double end = width * (square(rBorder[k + 1]) - square(rBorder[k])) / 2;
                volume[node] = end * length;
                if (k < rings - 1) {
                    along[node] = width * length / Math.log(r[k + 1] / r[k]);
                }
                if (s < sectors - 1) {
                    // k ∫ dr/r between the borders; the innermost cell of a full bar reaches to its own node
                    double from = rBorder[k] > 0 ? rBorder[k] : r[0] / 2;
                    across[node] = 2 * length * Math.log(rBorder[k + 1] / from) / (angle[s + 1] - angle[s]);
                }
                patches.add(Patch.free(node, 2 * end, 1.0 / 2));
            }
            patches.add(outside(s, width));
            if (hole > 0) {
                patches.add(Patch.free(s * rings, width * hole * length, -1));
            }
        }
        // a single radius is a row of nodes, each a column of its own
        boolean single = sectors == 1;
        return new Mesh(
                new SectionGrid(SectionGrid.Kind.POLAR, angle, r),
                single ? 1 : rings,
                volume,
                single ? across : along,
                single ? along : across,
                patches.toArray(Patch[]::new),
                places());
    }

    private Map<Place, Integer> places() {
        Map<Place, Integer> places = new EnumMap<>(Place.class);
        places.put(Place.CORE, sectors / 2 * rings + (hole > 0 ? rings / 2 : 0));
        if (sectors == 1) {
            places.put(Place.SURFACE, rings - 1);
        } else {
            places.put(Place.UNDERSIDE, rings - 1);
            places.put(Place.TOP, sectors * rings - 1);
        }
        return places;
    }

    private Patch outside(int s, double width) {
        double from = angleBorder[s];
        double to = angleBorder[s + 1];
        // mean of (1 + cos θ)/2 over the patch
        double view = sectors == 1 ? 1.0 / 2 : (1 + (Math.sin(to) - Math.sin(from)) / (to - from)) / 2;
        double clearance = radius * (1 - Math.cos((from + to) / 2));
        GapLength gap = sectors == 1 ? g -> 0 : g -> 2 * length * wedge(g, from, to);
        return new Patch((s + 1) * rings - 1, width * radius * length, view, gap, clearance, 0, 0, 0, 0);
    }

    /**
     * Conductance over conductivity of the air between a cylinder and a plane, from one angle to another, per length: the
     * bipolar solution, integrated: (2 / acosh(z/R)) [atan(√((z+R)/(z−R)) tan(θ/2))], z = R + δ0.
     */
    private double wedge(double gap, double from, double to) {
        double z = radius + gap;
        double root = Math.sqrt((z + radius) / (z - radius));
        // acosh
        double scale = Math.log(z / radius + Math.sqrt(square(z / radius) - 1));
        return 2 / scale * (turn(root, to) - turn(root, from));
    }

    private static double turn(double root, double angle) {
        return angle >= Math.PI ? Math.PI / 2 : Math.atan(root * Math.tan(angle / 2));
    }

    private static double square(double x) {
        return x * x;
    }
}
