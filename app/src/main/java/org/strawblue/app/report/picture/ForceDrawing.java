package org.strawblue.app.report.picture;

import java.util.List;
import java.util.Optional;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.app.report.picture.Mark.Anchor;
import org.strawblue.app.report.picture.Mark.Label;
import org.strawblue.app.report.picture.Mark.Lettering;
import org.strawblue.app.report.picture.Mark.Point;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.job.Picture.ForceLength;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/** Spring force against length with the bands asked for and the limits: solid, and where the wire takes a set. */
record ForceDrawing(ForceLength force, AmountWriter writer) {

    private static final double LEFT = 34;
    private static final double RIGHT = Drawing.WIDTH - 14;
    private static final double TOP = 24;
    private static final double BOTTOM = 200;
    private static final double HALF_WIDTH_OF_BAND = 7;

    Drawing draw() {
        Sheet sheet = new Sheet();
        Axis x = lengthAxis();
        Axis y = forceAxis();
        drawGrid(sheet, x, y);
        drawSolid(sheet, x);
        drawLine(sheet, x, y);
        drawPoint(sheet, x, y, force.lengthAtRest(), force.forceAtRest(), "at rest");
        drawPoint(sheet, x, y, force.lengthAtFullTravel(), force.forceAtFullTravel(), "full travel");
        drawSet(sheet, y);
        return sheet.drawing("Force against length", description(), BOTTOM + 32);
    }

    private Axis lengthAxis() {
        double range = force.freeLength() - force.solidLength();
        double room = range * 0.08;
        return new Axis(force.solidLength() - room, force.freeLength() + room, LEFT, RIGHT);
    }

    private Axis forceAxis() {
        double most = forceAt(force.rateHigh(), force.lengthAtFullTravel());
        most = Math.max(most, force.forceAtFullTravel().map(Band::high).orElse(most));
        double solid = forceAt(force.rate(), force.solidLength());
        double set = force.forceAtSet();
        most = Math.max(most * 1.15, Math.min(solid, most * 2));
        return new Axis(0, set < most * 1.6 ? Math.max(most, set * 1.12) : most, BOTTOM, TOP);
    }

    private double forceAt(double rate, double length) {
        return rate * (force.freeLength() - length);
    }

    private void drawGrid(Sheet sheet, Axis x, Axis y) {
        Unit length = unit(Dimension.LENGTH, "mm", "in");
        Unit newton = unit(Dimension.FORCE, "N", "lbf");
        for (double f : in(newton, y).ticks(6)) {
            double at = in(newton, y).at(f);
            sheet.line(Pen.GRID, LEFT, at, RIGHT, at);
            sheet.label(plain(f), LEFT - 5, at + 3.5, Lettering.SMALL, Anchor.END);
        }
        for (double l : in(length, x).ticks(6)) {
            double at = in(length, x).at(l);
            sheet.line(Pen.GRID, at, TOP, at, BOTTOM);
            sheet.label(plain(l), at, BOTTOM + 14, Lettering.SMALL, Anchor.MIDDLE);
        }
        sheet.line(Pen.THIN, LEFT, TOP, LEFT, BOTTOM).line(Pen.THIN, LEFT, BOTTOM, RIGHT, BOTTOM);
        sheet.label(newton.symbol(), LEFT - 5, TOP - 8, Lettering.SMALL, Anchor.END);
        sheet.label("length, " + length.symbol(), RIGHT, BOTTOM + 28, Lettering.SMALL, Anchor.END);
    }

    private void drawSolid(Sheet sheet, Axis x) {
        double at = x.at(force.solidLength());
        sheet.hatched(LEFT, TOP, at - LEFT, BOTTOM - TOP).line(Pen.OUTLINE, at, TOP, at, BOTTOM);
        sheet.label(
                "solid " + writer.write(Quantity.length(force.solidLength())),
                LEFT,
                BOTTOM + 28,
                Lettering.SMALL,
                Anchor.START);
    }

    private void drawSet(Sheet sheet, Axis y) {
        if (force.forceAtSet() < y.to()) {
            double at = y.at(force.forceAtSet());
            sheet.line(Pen.LIMIT, LEFT, at, RIGHT, at);
            String text = "takes a set above " + writer.write(Quantity.force(force.forceAtSet()));
            sheet.labelWhereFree(
                    new Label(text, RIGHT, at - 5, Lettering.SMALL, Anchor.END),
                    new Label(text, RIGHT, at + 12, Lettering.SMALL, Anchor.END),
                    new Label(text, RIGHT, TOP - 8, Lettering.SMALL, Anchor.END));
        }
    }

    private void drawLine(Sheet sheet, Axis x, Axis y) {
        Point free = new Point(x.at(force.freeLength()), y.at(0));
        sheet.path(Pen.BAND, List.of(free, end(force.rateLow(), x, y), end(force.rateHigh(), x, y)), true);
        sheet.path(Pen.CURVE, List.of(free, end(force.rate(), x, y)), false);
    }

    /** Where the line reaches solid, or leaves the sheet. */
    private Point end(double rate, Axis x, Axis y) {
        double length = Math.max(force.solidLength(), force.freeLength() - y.to() / rate);
        return new Point(x.at(length), y.at(forceAt(rate, length)));
    }

    private void drawPoint(Sheet sheet, Axis x, Axis y, double length, Optional<Band> wanted, String name) {
        double px = x.at(length);
        double py = y.within(forceAt(force.rate(), length));
        wanted.ifPresent(band -> drawWanted(sheet, px, y.within(band.low()), y.within(band.high())));
        sheet.line(Pen.LIMIT, px, py, px, BOTTOM).dot(Pen.POINT, px, py, 2.6);
        String text = name + " " + forceText(length);
        sheet.labelWhereFree(
                new Label(text, px + 12, py - 5, Lettering.STRONG, Anchor.START),
                new Label(text, px - 12, py + 14, Lettering.STRONG, Anchor.END),
                new Label(text, px + 12, py - 20, Lettering.STRONG, Anchor.START),
                new Label(text, px - 12, py + 28, Lettering.STRONG, Anchor.END),
                new Label(text, RIGHT, py - 5, Lettering.STRONG, Anchor.END),
                new Label(text, RIGHT, py - 20, Lettering.STRONG, Anchor.END));
    }

    private static void drawWanted(Sheet sheet, double x, double low, double high) {
        double w = HALF_WIDTH_OF_BAND;
        sheet.box(Pen.BAND, x - w, high, 2 * w, low - high);
        sheet.line(Pen.OUTLINE, x - w, high, x + w, high).line(Pen.OUTLINE, x - w, low, x + w, low);
    }

    private String description() {
        return "Free length " + writer.write(Quantity.length(force.freeLength())) + "; at rest "
                + forceText(force.lengthAtRest()) + "; at full travel "
                + forceText(force.lengthAtFullTravel()) + "; solid at "
                + writer.write(Quantity.length(force.solidLength())) + "; takes a set above "
                + writer.write(Quantity.force(force.forceAtSet())) + ".";
    }

    private String forceText(double length) {
        return writer.value(Estimate.of(
                Dimension.FORCE,
                forceAt(force.rate(), length),
                forceAt(force.rateLow(), length),
                forceAt(force.rateHigh(), length)));
    }

    private Unit unit(Dimension dimension, String metric, String inch) {
        return Units.of(dimension, writer.system() == UnitSystem.METRIC ? metric : inch);
    }

    private static Axis in(Unit unit, Axis si) {
        return new Axis(unit.fromSi(si.from()), unit.fromSi(si.to()), si.start(), si.end());
    }

    private static String plain(double value) {
        return java.math.BigDecimal.valueOf(value)
                .round(new java.math.MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }
}
