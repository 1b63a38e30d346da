package org.strawblue.app.report.picture;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.app.report.picture.Mark.Point;

/**
 * A coil cut along its axis: the wire's sections above and below, and behind the cut the half coils that join them,
 * hidden where the rod stands before them.
 *
 * @param left place of the seat on the sheet
 * @param axis height of the spring's axis on the sheet
 * @param scale sheet units for a metre
 * @param diameter outside diameter of the coil [m]
 * @param rod diameter of the rod [m], 0 where there is none
 */
record CoilDrawing(Coil coil, double left, double axis, double scale, double diameter, double rod) {

    private static final int CORNERS = 20;

    void draw(Sheet sheet) {
        int halves = (int) Math.floor(2 * coil.coils() + 1e-9);
        for (int k = 0; k < halves; k += 2) { // the other halves lie before the cut and are gone
            drawHalfCoil(sheet, middle(k), middle(k + 1));
        }
        for (int k = 0; k <= halves; k++) {
            sheet.path(Pen.SECTION, section(middle(k)), true);
        }
    }

    private Point middle(int halfTurns) {
        double offset = (diameter - coil.wire()) * scale / 2;
        return new Point(left + coil.at(halfTurns / 2.0) * scale, axis + (halfTurns % 2 == 0 ? -offset : offset));
    }

    private double radius() {
        return coil.wire() * scale / 2;
    }

    private void drawHalfCoil(Sheet sheet, Point a, Point b) {
        double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
        double nx = -(b.y() - a.y()) / length * radius();
        double ny = (b.x() - a.x()) / length * radius();
        drawEdge(sheet, new Point(a.x() + nx, a.y() + ny), new Point(b.x() + nx, b.y() + ny));
        drawEdge(sheet, new Point(a.x() - nx, a.y() - ny), new Point(b.x() - nx, b.y() - ny));
    }

    private void drawEdge(Sheet sheet, Point a, Point b) {
        double half = rod * scale / 2;
        if (half == 0) {
            line(sheet, a, b);
        } else {
            line(sheet, a, atHeight(a, b, axis - half));
            line(sheet, atHeight(a, b, axis + half), b);
        }
    }

    private void line(Sheet sheet, Point a, Point b) {
        sheet.line(Pen.WIRE, within(a.x()), a.y(), within(b.x()), b.y());
    }

    private static Point atHeight(Point a, Point b, double y) {
        return new Point(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()), y);
    }

    /** A circle, ground flat where it would stand out beyond the spring's faces. */
    private List<Point> section(Point middle) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < CORNERS; i++) {
            double angle = 2 * Math.PI * i / CORNERS;
            points.add(new Point(
                    within(middle.x() + radius() * Math.cos(angle)), middle.y() + radius() * Math.sin(angle)));
        }
        return points;
    }

    private double within(double x) {
        return Math.max(left, Math.min(left + coil.length() * scale, x));
    }
}
