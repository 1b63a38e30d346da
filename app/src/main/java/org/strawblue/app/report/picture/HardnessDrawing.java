package org.strawblue.app.report.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.app.report.picture.Mark.Anchor;
import org.strawblue.app.report.picture.Mark.Lettering;
import org.strawblue.app.report.picture.Mark.Point;
import org.strawblue.core.job.Picture.CurvePoint;
import org.strawblue.core.job.Picture.HardnessCurve;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;

/** Hardness over tempering temperature with its 80 % interval, the wanted band lying, the chosen temperatures standing. */
record HardnessDrawing(HardnessCurve curve, AmountWriter writer) {

    private static final double LEFT = 34;
    private static final double RIGHT = Drawing.WIDTH - 12;
    private static final double TOP = 46;
    private static final double BOTTOM = 214;

    Drawing draw() {
        Sheet sheet = new Sheet();
        Axis x = new Axis(
                curve.points().get(0).kelvin(),
                curve.points().get(curve.points().size() - 1).kelvin(),
                LEFT,
                RIGHT);
        Axis y = hardnessAxis();
        drawGrid(sheet, x, y);
        curve.wanted().ifPresent(w -> drawWanted(sheet, w, y));
        drawCurve(sheet, x, y);
        curve.chosen().ifPresent(c -> drawChosen(sheet, c, x));
        return sheet.drawing("Hardness after tempering", description(), BOTTOM + 22);
    }

    private Axis hardnessAxis() {
        double low = curve.points().stream().mapToDouble(CurvePoint::low).min().orElse(0);
        double high =
                curve.points().stream().mapToDouble(CurvePoint::high).max().orElse(1);
        low = Math.min(low, curve.wanted().map(Band::low).orElse(low));
        high = Math.max(high, curve.wanted().map(Band::high).orElse(high));
        double room = Math.max(1, (high - low) * 0.06);
        return new Axis(low - room, high + room, BOTTOM, TOP);
    }

    private void drawGrid(Sheet sheet, Axis x, Axis y) {
        TemperatureScale scale = new TemperatureScale(x, writer.system());
        for (double at : scale.ticks()) {
            sheet.line(Pen.GRID, at, TOP, at, BOTTOM);
        }
        for (double hrc : y.ticks(6)) {
            sheet.line(Pen.GRID, LEFT, y.at(hrc), RIGHT, y.at(hrc));
            sheet.label(Long.toString(Math.round(hrc)), LEFT - 5, y.at(hrc) + 3.5, Lettering.SMALL, Anchor.END);
        }
        sheet.label("HRC", 2, TOP - 7, Lettering.SMALL, Anchor.START);
        sheet.line(Pen.THIN, LEFT, TOP, LEFT, BOTTOM).line(Pen.THIN, RIGHT, TOP, RIGHT, BOTTOM);
        scale.drawBelow(sheet, BOTTOM);
        scale.drawAbove(sheet, TOP, curve.chosen());
    }

    private void drawWanted(Sheet sheet, Band wanted, Axis y) {
        double top = y.at(wanted.high());
        double bottom = y.at(wanted.low());
        sheet.box(Pen.WANTED, LEFT, top, RIGHT - LEFT, bottom - top);
        sheet.line(Pen.LIMIT, LEFT, top, RIGHT, top).line(Pen.LIMIT, LEFT, bottom, RIGHT, bottom);
        String text = "wanted " + writer.write(wanted);
        boolean roomAbove = top - TOP > 16;
        sheet.label(text, RIGHT - 6, roomAbove ? top - 5 : bottom + 12, Lettering.PLAIN, Anchor.END);
    }

    private void drawCurve(Sheet sheet, Axis x, Axis y) {
        List<Point> middle = new ArrayList<>();
        List<Point> upper = new ArrayList<>();
        List<Point> lower = new ArrayList<>();
        for (CurvePoint p : curve.points()) {
            middle.add(new Point(x.at(p.kelvin()), y.at(p.hrc())));
            upper.add(new Point(x.at(p.kelvin()), y.at(p.high())));
            lower.add(new Point(x.at(p.kelvin()), y.at(p.low())));
        }
        Collections.reverse(lower);
        upper.addAll(lower);
        sheet.path(Pen.BAND, upper, true).path(Pen.CURVE, middle, false);
    }

    private void drawChosen(Sheet sheet, Band chosen, Axis x) {
        double x1 = x.within(chosen.low());
        double x2 = x.within(chosen.high());
        double level = TOP - 20;
        sheet.line(Pen.OUTLINE, x1, level, x1, BOTTOM).line(Pen.OUTLINE, x2, level, x2, BOTTOM);
        sheet.line(Pen.OUTLINE, x1, level, x2, level);
        String text = "temper at " + writer.write(chosen);
        double half = Lettering.STRONG.width(text) / 2;
        double middle = Math.max(LEFT + half, Math.min(RIGHT - half, (x1 + x2) / 2));
        sheet.label(text, middle, level - 6, Lettering.STRONG, Anchor.MIDDLE);
    }

    private String description() {
        CurvePoint first = curve.points().get(0);
        CurvePoint last = curve.points().get(curve.points().size() - 1);
        return "Tempered " + writer.write(Quantity.time(curve.seconds())) + ": from " + point(first) + " to "
                + point(last)
                + curve.wanted().map(w -> "; wanted " + writer.write(w)).orElse("")
                + curve.chosen().map(c -> "; temper at " + writer.write(c)).orElse("")
                + ". The shaded field holds the truth eight times in ten.";
    }

    private String point(CurvePoint p) {
        return writer.write(new Quantity(Dimension.HARDNESS, p.hrc())) + " at "
                + writer.write(Quantity.temperature(p.kelvin()));
    }
}
