package org.strawblue.app.report.picture;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.app.report.picture.Mark.Anchor;
import org.strawblue.app.report.picture.Mark.Label;
import org.strawblue.app.report.picture.Mark.Lettering;
import org.strawblue.app.report.picture.Mark.Point;

/** A sheet on which a drawing grows, with the strokes a draughtsman repeats. */
final class Sheet {

    private static final double ARROW = 5;
    private static final double HATCH_GAP = 5;

    private final List<Mark> marks = new ArrayList<>();

    Sheet line(Pen pen, double x1, double y1, double x2, double y2) {
        return path(pen, List.of(new Point(x1, y1), new Point(x2, y2)), false);
    }

    Sheet path(Pen pen, List<Point> points, boolean closed) {
        marks.add(new Mark.Path(pen, points, closed));
        return this;
    }

    Sheet box(Pen pen, double x, double y, double width, double height) {
        return path(
                pen,
                List.of(
                        new Point(x, y),
                        new Point(x + width, y),
                        new Point(x + width, y + height),
                        new Point(x, y + height)),
                true);
    }

    Sheet field(String hex, double x, double y, double width, double height) {
        marks.add(new Mark.Field(hex, x, y, width, height));
        return this;
    }

    Sheet patch(String hex, List<Point> points) {
        marks.add(new Mark.Patch(hex, points));
        return this;
    }

    Sheet label(String text, double x, double y, Lettering lettering, Anchor anchor) {
        marks.add(new Mark.Label(text, x, y, lettering, anchor));
        return this;
    }

    /** The first of these that lies on no lettering yet and within the sheet; the last where all do. */
    Sheet labelWhereFree(Label... candidates) {
        Label chosen = candidates[candidates.length - 1];
        for (int i = candidates.length - 1; i >= 0; i--) {
            chosen = free(candidates[i]) ? candidates[i] : chosen;
        }
        marks.add(chosen);
        return this;
    }

    private boolean free(Label label) {
        boolean onSheet = label.left() >= 0
                && label.right() <= Drawing.WIDTH
                && label.y() > label.lettering().size();
        return onSheet && marks.stream().noneMatch(m -> m instanceof Label other && label.overlaps(other));
    }

    /** A dot of this radius. */
    Sheet dot(Pen pen, double x, double y, double radius) {
        List<Point> points = new ArrayList<>();
        int corners = 24;
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            points.add(new Point(x + radius * Math.cos(angle), y + radius * Math.sin(angle)));
        }
        return path(pen, points, true);
    }

    /** A level dimension: line, arrowheads outside where there is no room between; its text above the middle or beside. */
    Sheet levelDimension(double x1, double x2, double y, String text) {
        return levelDimension(x1, x2, y, text, Math.max(x1, x2));
    }

    /** As above; a text that stands beside begins beyond {@code clear}. */
    Sheet levelDimension(double x1, double x2, double y, String text, double clear) {
        double left = Math.min(x1, x2);
        double right = Math.max(x1, x2);
        if (right - left > 4 * ARROW) {
            line(Pen.THIN, left, y, right, y).arrow(left, y, -1, 0).arrow(right, y, 1, 0);
        } else {
            line(Pen.THIN, left - 3 * ARROW, y, right + 3 * ARROW, y)
                    .arrow(left, y, 1, 0)
                    .arrow(right, y, -1, 0);
        }
        double width = Lettering.PLAIN.width(text);
        double gap = right - left > 4 * ARROW ? 5 : 3 * ARROW + 4;
        if (right - left > width + 4) {
            return label(text, (left + right) / 2, y - 4, Lettering.PLAIN, Anchor.MIDDLE);
        }
        double start = Math.max(right + gap, clear + 5);
        return start + width < Drawing.WIDTH
                ? label(text, start, y + 4, Lettering.PLAIN, Anchor.START)
                : label(text, left - gap, y + 4, Lettering.PLAIN, Anchor.END);
    }

    /** An arrowhead whose tip is at (x, y), pointing along (dx, dy). */
    Sheet arrow(double x, double y, double dx, double dy) {
        double back = ARROW;
        double half = ARROW / 3.2;
        return path(
                Pen.ARROW,
                List.of(
                        new Point(x, y),
                        new Point(x - dx * back - dy * half, y - dy * back + dx * half),
                        new Point(x - dx * back + dy * half, y - dy * back - dx * half)),
                true);
    }

    /** A box filled with the slanting lines of a section. */
    Sheet hatched(double x, double y, double width, double height) {
        for (double c = HATCH_GAP; c < width + height; c += HATCH_GAP) {
            double x1 = Math.min(c, width);
            double x2 = Math.max(c - height, 0);
            line(Pen.HATCH, x + x1, y + c - x1, x + x2, y + c - x2);
        }
        return this;
    }

    Drawing drawing(String title, String description, double height) {
        return new Drawing(title, description, Drawing.WIDTH, height, marks);
    }
}
