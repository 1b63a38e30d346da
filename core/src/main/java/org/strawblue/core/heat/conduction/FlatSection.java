package org.strawblue.core.heat.conduction;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.strawblue.core.heat.conduction.Mesh.Patch;
import org.strawblue.core.heat.course.SectionGrid;
import org.strawblue.core.history.Place;

/** The section of a flat or square bar: half its width, by distance from the middle and height above its underside. */
final class FlatSection {

    private final double length;
    private final double[] x;
    private final double[] xBorder;
    private final double[] y;
    private final double[] yBorder;

    private FlatSection(double thickness, double width, double length, Fineness fineness) {
        this.length = length;
        int columns = Math.max(8, fineness.sectors() * 2 / 3);
        this.x = Spacing.graded(0, width / 2, columns - 1, 1.0 / 6);
        this.xBorder = Spacing.borders(x);
        this.y = Spacing.graded(0, thickness, fineness.rings() - 1, 1);
        this.yBorder = Spacing.borders(y);
    }

    static Mesh of(double thickness, double width, double length, Fineness fineness) {
        return new FlatSection(thickness, width, length, fineness).mesh();
    }

    private Mesh mesh() {
        int rows = y.length;
        int n = x.length * rows;
        double[] volume = new double[n];
        double[] along = new double[n];
        double[] across = new double[n];
        List<Patch> patches = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            double dx = 2 * (xBorder[i + 1] - xBorder[i]);
            for (int j = 0; j < rows; j++) {
                int node = i * rows + j;
                double dy = yBorder[j + 1] - yBorder[j];
                volume[node] = dx * dy * length;
                along[node] = j < rows - 1 ? dx * length / (y[j + 1] - y[j]) : 0;
                across[node] = i < x.length - 1 ? 2 * dy * length / (x[i + 1] - x[i]) : 0;
                patches.add(Patch.free(node, 2 * dx * dy, 1.0 / 2));
                if (i == x.length - 1) {
                    patches.add(Patch.free(node, 2 * dy * length, 1.0 / 2));
                }
            }
            double area = dx * length;
            patches.add(new Patch(i * rows, area, 1, gap -> area / gap, 0, 0, 0, 0, 0));
            patches.add(Patch.free((i + 1) * rows - 1, area, 0));
        }
        return new Mesh(
                new SectionGrid(SectionGrid.Kind.RECTANGLE, x, y),
                rows,
                volume,
                along,
                across,
                patches.toArray(Patch[]::new),
                places(n, rows));
    }

    private static Map<Place, Integer> places(int n, int rows) {
        Map<Place, Integer> places = new EnumMap<>(Place.class);
        places.put(Place.UNDERSIDE, 0);
        places.put(Place.TOP, rows - 1);
        places.put(Place.CORE, rows / 2);
        places.put(Place.EDGE, n - 1);
        return places;
    }
}
