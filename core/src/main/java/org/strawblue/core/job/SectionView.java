package org.strawblue.core.job;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.heat.course.CourseRun;
import org.strawblue.core.heat.course.Frame;
import org.strawblue.core.heat.course.SectionGrid;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.part.PartShape.SteppedPin.Piece;
import org.strawblue.core.quantity.Phrase;

/**
 * The section of a part in patches for drawing, from the nodes a run was reckoned on: across a bar or flat, or along a rod. The
 * half that was reckoned is drawn with its mirror image.
 */
public final class SectionView {

    private static final int ALL_ROUND = 24;
    private static final int MOST = 14;
    /** Straight pieces of an arc for each radian. */
    private static final int ARCS = 10;

    /** A patch with the node whose temperature it shows. */
    private record Drawn(Picture.Cell cell, int node) {}

    private final PartShape shape;
    private final SectionGrid grid;
    private final List<Drawn> patches = new ArrayList<>();

    private SectionView(PartShape shape, SectionGrid grid) {
        this.shape = shape;
        this.grid = grid;
        switch (grid.kind()) {
            case POLAR -> polar();
            case RECTANGLE -> rectangle();
            case ROD -> rod();
        }
    }

    /**
     * @param frames the moments to show
     * @param onPlate whether it lies on a hot plate
     */
    public static Picture.SectionWarming of(
            PartShape shape, CourseRun run, List<Frame> frames, Phrase caption, boolean onPlate) {
        SectionView view = new SectionView(shape, run.grid());
        List<Picture.Moment> moments = frames.stream().map(view::moment).toList();
        return new Picture.SectionWarming(
                caption, view.patches.stream().map(Drawn::cell).toList(), moments, onPlate);
    }

    private Picture.Moment moment(Frame frame) {
        double[] kelvin = frame.kelvin();
        return new Picture.Moment(
                frame.seconds(), patches.stream().map(p -> kelvin[p.node()]).toList());
    }

    private void polar() {
        double[] angle = grid.across();
        double[] radius = grid.up();
        double hole = shape instanceof PartShape.Tube tube ? tube.inside() / 2 : 0;
        double outside = radius[radius.length - 1];
        double[] ring = borders(radius, hole, outside);
        boolean symmetric = angle.length == 1;
        double[] turn = symmetric ? even(Math.PI, ALL_ROUND) : borders(angle, 0, Math.PI);
        int stepAcross = symmetric ? 1 : step(angle.length);
        int stepUp = step(radius.length);
        for (int i = 0; i < turn.length - 1; i += stepAcross) {
            double to = turn[Math.min(i + stepAcross, turn.length - 1)];
            for (int k = 0; k < radius.length; k += stepUp) {
                double far = ring[Math.min(k + stepUp, radius.length)];
                int node = (symmetric ? 0 : i) * radius.length + Math.min(k + stepUp / 2, radius.length - 1);
                wedge(turn[i], to, ring[k], far, outside, node);
                wedge(-turn[i], -to, ring[k], far, outside, node);
            }
        }
    }

    private void wedge(double from, double to, double near, double far, double up, int node) {
        List<Picture.Corner> corners = new ArrayList<>();
        arc(corners, from, to, far, up);
        if (near > 0) {
            arc(corners, to, from, near, up);
        } else {
            corners.add(at(from, 0, up));
        }
        patches.add(new Drawn(new Picture.Cell(corners), node));
    }

    private static void arc(List<Picture.Corner> corners, double from, double to, double radius, double up) {
        int pieces = 1 + (int) (Math.abs(to - from) * ARCS);
        for (int i = 0; i <= pieces; i++) {
            corners.add(at(from + (to - from) * i / pieces, radius, up));
        }
    }

    /** Angles from the underside. */
    private static Picture.Corner at(double angle, double radius, double up) {
        return new Picture.Corner(radius * Math.sin(angle), up - radius * Math.cos(angle));
    }

    private void rectangle() {
        double[] across = grid.across();
        double[] up = grid.up();
        double[] x = borders(across, 0, across[across.length - 1]);
        double[] y = borders(up, 0, up[up.length - 1]);
        int stepAcross = step(across.length);
        int stepUp = step(up.length);
        for (int i = 0; i < across.length; i += stepAcross) {
            for (int k = 0; k < up.length; k += stepUp) {
                int node = Math.min(i + stepAcross / 2, across.length - 1) * up.length
                        + Math.min(k + stepUp / 2, up.length - 1);
                double right = x[Math.min(i + stepAcross, across.length)];
                double top = y[Math.min(k + stepUp, up.length)];
                box(x[i], right, y[k], top, node);
                box(-right, -x[i], y[k], top, node);
            }
        }
    }

    private void rod() {
        double[] x = grid.across();
        double[] border = borders(x, 0, x[x.length - 1]);
        List<Piece> pieces = pieces();
        double thickest = pieces.stream().mapToDouble(Piece::diameter).max().orElse(0);
        double start = 0;
        for (Piece piece : pieces) {
            double end = start + piece.length();
            for (int i = 0; i < x.length; i++) {
                double from = Math.max(start, border[i]);
                double to = Math.min(end, border[i + 1]);
                if (to > from) {
                    slice(from, to, piece.diameter(), thickest, i);
                }
            }
            start = end;
        }
    }

    private void slice(double from, double to, double diameter, double thickest, int node) {
        double low = (thickest - diameter) / 2;
        double high = (thickest + diameter) / 2;
        if (shape instanceof PartShape.Tube tube) {
            box(from, to, low, low + tube.wall(), node);
            box(from, to, high - tube.wall(), high, node);
        } else {
            box(from, to, low, high, node);
        }
    }

    private List<Piece> pieces() {
        if (shape instanceof PartShape.SteppedPin pin) {
            return pin.pieces();
        }
        if (shape instanceof PartShape.RoundBar bar) {
            return List.of(new Piece(bar.diameter(), bar.length()));
        }
        if (shape instanceof PartShape.SquareBar bar) {
            return List.of(new Piece(bar.side(), bar.length()));
        }
        if (shape instanceof PartShape.Tube tube) {
            return List.of(new Piece(tube.outside(), tube.length()));
        }
        PartShape.Flat flat = (PartShape.Flat) shape;
        return List.of(new Piece(flat.thickness(), flat.length()));
    }

    private void box(double left, double right, double low, double high, int node) {
        patches.add(new Drawn(
                new Picture.Cell(List.of(
                        new Picture.Corner(left, low),
                        new Picture.Corner(right, low),
                        new Picture.Corner(right, high),
                        new Picture.Corner(left, high))),
                node));
    }

    /** Neighbours drawn as one, so that a drawing stays small. */
    private static int step(int nodes) {
        return (nodes + MOST - 1) / MOST;
    }

    private static double[] even(double to, int parts) {
        double[] at = new double[parts + 1];
        for (int i = 0; i <= parts; i++) {
            at[i] = to * i / parts;
        }
        return at;
    }

    private static double[] borders(double[] nodes, double from, double to) {
        double[] borders = new double[nodes.length + 1];
        borders[0] = from;
        for (int i = 1; i < nodes.length; i++) {
            borders[i] = (nodes[i - 1] + nodes[i]) / 2;
        }
        borders[nodes.length] = to;
        return borders;
    }
}
