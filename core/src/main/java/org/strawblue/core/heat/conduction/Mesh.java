package org.strawblue.core.heat.conduction;

import java.util.Map;
import org.strawblue.core.heat.course.SectionGrid;
import org.strawblue.core.history.Place;

/**
 * Nodes with their volumes, the links between them and the patches of surface. Node = column × rows + row. Volumes and areas are
 * those of the whole part, so that heats come out in joules.
 *
 * @param volume of each node [m³]
 * @param along geometry factor of the link from each node to the next row, area over distance [m]; 0 at the end of a column
 * @param across the same from each node to the next column [m]
 * @param patches of the surface
 * @param places which node each named place is
 */
@SuppressWarnings("ArrayRecordComponent") // shared within this room for speed, never changed
record Mesh(
        SectionGrid grid,
        int rows,
        double[] volume,
        double[] along,
        double[] across,
        Patch[] patches,
        Map<Place, Integer> places) {

    int size() {
        return volume.length;
    }

    /**
     * A piece of surface that belongs to one node.
     *
     * @param area [m²]
     * @param viewOfPlate share of what it sees that is the plate it lies on [1]
     * @param gapLength conductance through the air gap to the plate over the air's conductivity, by the nearest gap δ0 [m]
     * @param clearance height over the plate beyond the nearest gap [m]; infinite where it never looks at the plate
     * @param from distance of the patch from the part's end, where it begins [m]
     * @param to where it ends [m]
     * @param depth resistance between surface and node times conductivity [m]
     * @param constriction resistance of a line of contact times conductivity [m·K·m/K]: series with the gap, times its length
     */
    record Patch(
            int node,
            double area,
            double viewOfPlate,
            GapLength gapLength,
            double clearance,
            double from,
            double to,
            double depth,
            double constriction) {

        static Patch free(int node, double area, double view) {
            return new Patch(node, area, view, gap -> 0, Double.POSITIVE_INFINITY, 0, 0, 0, 0);
        }
    }

    /** Conductance of the gap over the conductivity of air [m], by the nearest gap [m]. */
    @FunctionalInterface
    interface GapLength {
        double at(double gap);
    }
}
