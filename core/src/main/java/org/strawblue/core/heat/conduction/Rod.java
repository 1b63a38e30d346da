package org.strawblue.core.heat.conduction;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.strawblue.core.heat.conduction.Mesh.GapLength;
import org.strawblue.core.heat.conduction.Mesh.Patch;
import org.strawblue.core.heat.course.SectionGrid;
import org.strawblue.core.history.Place;
import org.strawblue.core.part.PartShape;

/**
 * A part along its length, each slice at one temperature, for what happens at one end of it: a flame on the end, a dip, heat that
 * runs back to the edge. The way from a slice's surface to its mean temperature is a resistance V/(S·k) times 1/2 for round, 2/3
 * for square, 1/3 for flat sections (uniform heating from all sides).
 */
final class Rod {

    private static final double CONSTRICTION = Figures.OWN.number("line-constriction");

    /**
     * One piece of a rod.
     *
     * @param clearance height of its underside over the plate the thickest piece lies on [m]
     * @param round whether it touches a plate along a line only
     */
    private record Piece(
            double length, double area, double girth, double depth, double clearance, double radius, boolean round) {}

    private Rod() {}

    static Mesh of(PartShape shape, Fineness fineness) {
        return mesh(pieces(shape), fineness);
    }

    private static List<Piece> pieces(PartShape shape) {
        if (shape instanceof PartShape.RoundBar bar) {
            return List.of(round(bar.diameter(), bar.length(), bar.diameter()));
        }
        if (shape instanceof PartShape.SteppedPin pin) {
            return pin.pieces().stream()
                    .map(p -> round(p.diameter(), p.length(), pin.thickest()))
                    .toList();
        }
        if (shape instanceof PartShape.SquareBar bar) {
            double area = bar.side() * bar.side();
            return List.of(new Piece(bar.length(), area, 4 * bar.side(), bar.side() / 6, 0, 0, false));
        }
        if (shape instanceof PartShape.Flat flat) {
            double area = flat.thickness() * flat.width();
            double girth = 2 * (flat.thickness() + flat.width());
            return List.of(new Piece(flat.length(), area, girth, area / girth / 3, 0, 0, false));
        }
        PartShape.Tube tube = (PartShape.Tube) shape;
        double area = Math.PI * (square(tube.outside()) - square(tube.inside())) / 4;
        double girth = Math.PI * (tube.outside() + tube.inside());
        return List.of(new Piece(tube.length(), area, girth, area / girth / 3, 0, 0, false));
    }

    private static Piece round(double diameter, double length, double thickest) {
        return new Piece(
                length,
                Math.PI * square(diameter) / 4,
                Math.PI * diameter,
                diameter / 8,
                (thickest - diameter) / 2,
                diameter / 2,
                true);
    }

    private static Mesh mesh(List<Piece> pieces, Fineness fineness) {
        double length = pieces.stream().mapToDouble(Piece::length).sum();
        double[] x = Spacing.graded(0, length, fineness.slices(), 4);
        double[] border = Spacing.borders(x);
        int n = x.length;
        double[] volume = new double[n];
        double[] across = new double[n];
        List<Patch> patches = new ArrayList<>();
        int fattest = 0;
        for (int i = 0; i < n; i++) {
            double from = border[i];
            double to = border[i + 1];
            Piece piece = pieceAt(pieces, x[i]);
            volume[i] = mean(pieces, from, to, Piece::area) * (to - from);
            if (i < n - 1) {
                across[i] = 1 / resistance(pieces, x[i], x[i + 1]);
            }
            double girth = mean(pieces, from, to, Piece::girth);
            patches.add(new Patch(
                    i,
                    girth * (to - from),
                    1.0 / 2,
                    gap(piece, girth, to - from),
                    piece.clearance(),
                    from,
                    to,
                    piece.depth(),
                    piece.round() ? CONSTRICTION / (to - from) : 0));
            fattest = volume[i] / (to - from) > volume[fattest] / (border[fattest + 1] - border[fattest]) ? i : fattest;
        }
        patches.add(end(0, pieces.get(0).area(), 0));
        patches.add(end(n - 1, pieces.get(pieces.size() - 1).area(), length));
        Map<Place, Integer> places = new EnumMap<>(Place.class);
        places.put(Place.EDGE, 0);
        places.put(Place.SURFACE, fattest);
        places.put(Place.CORE, n - 1);
        return new Mesh(
                new SectionGrid(SectionGrid.Kind.ROD, x, new double[] {0}),
                1,
                volume,
                new double[n],
                across,
                patches.toArray(Patch[]::new),
                places);
    }

    private static Patch end(int node, double area, double at) {
        return new Patch(node, area, 1.0 / 2, g -> 0, Double.POSITIVE_INFINITY, at, at, 0, 0);
    }

    private static GapLength gap(Piece piece, double girth, double length) {
        if (!piece.round()) {
            return g -> girth / 4 * length / (g + piece.clearance());
        }
        return g -> {
            double ratio = 1 + (g + piece.clearance()) / piece.radius();
            return 2 * Math.PI / Math.log(ratio + Math.sqrt(square(ratio) - 1)) * length;
        };
    }

    private static Piece pieceAt(List<Piece> pieces, double x) {
        double end = 0;
        for (Piece piece : pieces) {
            end += piece.length();
            if (x < end) {
                return piece;
            }
        }
        return pieces.get(pieces.size() - 1);
    }

    private static double mean(
            List<Piece> pieces, double from, double to, java.util.function.ToDoubleFunction<Piece> figure) {
        return sum(pieces, from, to, figure) / (to - from);
    }

    private static double resistance(List<Piece> pieces, double from, double to) {
        return sum(pieces, from, to, p -> 1 / p.area());
    }

    /** ∫ figure dx */
    private static double sum(
            List<Piece> pieces, double from, double to, java.util.function.ToDoubleFunction<Piece> figure) {
        double start = 0;
        double sum = 0;
        for (Piece piece : pieces) {
            double end = start + piece.length();
            double overlap = Math.min(end, to) - Math.max(start, from);
            sum += Math.max(0, overlap) * figure.applyAsDouble(piece);
            start = end;
        }
        return sum;
    }

    private static double square(double x) {
        return x * x;
    }
}
