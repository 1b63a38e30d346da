package org.strawblue.app.report.picture;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.app.report.picture.Mark.Anchor;
import org.strawblue.app.report.picture.Mark.Lettering;
import org.strawblue.core.job.Picture.SpringInPocket;
import org.strawblue.core.quantity.Quantity;

/** The spring cut along its axis, to scale in its pocket: above at rest, below at full travel, seats in line. */
record SpringDrawing(SpringInPocket spring, AmountWriter writer) {

    private static final double LEFT = 16;
    private static final double LENGTH = 236;
    private static final double TALLEST = 88;
    private static final double WALL = 9;
    private static final double SEAT = 7;
    private static final double PLUNGER = 10;
    private static final double BETWEEN = 84;
    private static final double LINE = 14;
    private static final double ROW = 22;
    private static final double HEAD = 20;

    Drawing draw() {
        Sheet sheet = new Sheet();
        double scale = scale();
        double height = outside() * scale;
        double first = HEAD + WALL + 8;
        double second = first + height + 2 * WALL + BETWEEN;
        drawView(sheet, scale, first, spring.lengthAtRest(), spring.outsideDiameter(), "at rest");
        drawLabels(sheet, scale, first, fixedSizes());
        drawLength(sheet, first + height, LEFT + spring.lengthAtRest() * scale, ROW, length(spring.lengthAtRest()));
        double full = spring.lengthAtFullTravel();
        drawView(sheet, scale, second, full, spring.outsideDiameterAtFullTravel(), "at full travel");
        drawLabels(sheet, scale, second, List.of("coil Ø" + length(spring.outsideDiameterAtFullTravel())));
        drawTravel(sheet, scale, first + height, second - WALL);
        drawSolid(sheet, scale, second + height);
        drawLength(sheet, second + height, LEFT + full * scale, 2 * ROW, length(full));
        return sheet.drawing("The spring in its pocket, to scale", description(), second + height + WALL + 58);
    }

    private double scale() {
        double longest = Math.max(spring.freeLength(), spring.lengthAtRest());
        return Math.min(LENGTH / longest, TALLEST / outside());
    }

    private double outside() {
        return Math.max(spring.bore(), Math.max(spring.outsideDiameter(), spring.outsideDiameterAtFullTravel()));
    }

    private void drawView(Sheet sheet, double scale, double top, double length, double diameter, String name) {
        double height = outside() * scale;
        double axis = top + height / 2;
        double end = LEFT + length * scale;
        sheet.label(name, LEFT, top - WALL - 6, Lettering.STRONG, Anchor.START);
        drawPocket(sheet, scale, top, height);
        drawRod(sheet, scale, axis, end);
        new CoilDrawing(Coil.of(spring, length), LEFT, axis, scale, diameter, spring.rod()).draw(sheet);
        drawPlunger(sheet, axis, height, end);
        sheet.line(Pen.CENTRE, LEFT - SEAT - 6, axis, end + PLUNGER + 8, axis);
    }

    /** The walls of the bore and its bottom, in section; without a bore, the seat alone. */
    private void drawPocket(Sheet sheet, double scale, double top, double height) {
        double mouth = mouth(scale);
        double wall = spring.bore() > 0 ? WALL : 0;
        sheet.hatched(LEFT - SEAT, top - wall, SEAT, height + 2 * wall);
        sheet.line(Pen.OUTLINE, LEFT, top, LEFT, top + height);
        if (wall > 0) {
            sheet.hatched(LEFT, top - wall, mouth - LEFT, wall).hatched(LEFT, top + height, mouth - LEFT, wall);
            sheet.line(Pen.OUTLINE, LEFT, top, mouth, top);
            sheet.line(Pen.OUTLINE, LEFT, top + height, mouth, top + height);
        }
    }

    private void drawRod(Sheet sheet, double scale, double axis, double end) {
        if (spring.rod() > 0) {
            double half = spring.rod() * scale / 2;
            sheet.box(Pen.METAL, LEFT, axis - half, end - LEFT, 2 * half);
            sheet.line(Pen.THIN, LEFT, axis - half, end, axis - half);
            sheet.line(Pen.THIN, LEFT, axis + half, end, axis + half);
        }
    }

    private void drawPlunger(Sheet sheet, double axis, double height, double end) {
        double half = height / 2 * 0.96;
        sheet.line(Pen.OUTLINE, end, axis - half, end, axis + half);
        sheet.hatched(end, axis - half, PLUNGER, 2 * half);
    }

    private void drawLength(Sheet sheet, double bottom, double end, double below, String text) {
        double y = bottom + WALL + below;
        sheet.line(Pen.THIN, LEFT, bottom, LEFT, y + 4).line(Pen.THIN, end, bottom, end, y + 4);
        sheet.levelDimension(LEFT, end, y, text);
    }

    private List<String> fixedSizes() {
        List<String> sizes = new ArrayList<>();
        if (spring.bore() > 0) {
            sizes.add("bore Ø" + length(spring.bore()));
        }
        sizes.add("coil Ø" + length(spring.outsideDiameter()));
        sizes.add("wire Ø" + length(spring.wire()));
        if (spring.rod() > 0) {
            sizes.add("rod Ø" + length(spring.rod()));
        }
        return sizes;
    }

    private void drawLabels(Sheet sheet, double scale, double top, List<String> lines) {
        double x = mouth(scale) + 8;
        double y = top + outside() * scale / 2 - LINE * (lines.size() - 1) / 2 + 4;
        for (int i = 0; i < lines.size(); i++) {
            sheet.label(lines.get(i), x, y + LINE * i, Lettering.SMALL, Anchor.START);
        }
    }

    /** How far the plunger goes, between the two views. */
    private void drawTravel(Sheet sheet, double scale, double from, double to) {
        double rest = LEFT + spring.lengthAtRest() * scale;
        double full = LEFT + spring.lengthAtFullTravel() * scale;
        double y = to - 28;
        sheet.line(Pen.THIN, rest, from, rest, y + 4).line(Pen.THIN, full, y - 4, full, to + WALL);
        double travel = spring.lengthAtRest() - spring.lengthAtFullTravel();
        sheet.levelDimension(full, rest, y, "travel " + length(travel));
    }

    /** Where the coils would touch, under the second view. */
    private void drawSolid(Sheet sheet, double scale, double bottom) {
        double solid = LEFT + spring.solidLength() * scale;
        sheet.line(Pen.LIMIT, solid, bottom - outside() * scale, solid, bottom);
        double y = bottom + WALL + ROW;
        double full = LEFT + spring.lengthAtFullTravel() * scale;
        sheet.line(Pen.THIN, LEFT, bottom, LEFT, y + 4).line(Pen.THIN, solid, bottom, solid, y + 4);
        sheet.levelDimension(LEFT, solid, y, "solid " + length(spring.solidLength()), full);
    }

    private double mouth(double scale) {
        return LEFT + Math.max(spring.freeLength(), spring.lengthAtRest()) * scale;
    }

    private String length(double metres) {
        return writer.write(Quantity.length(metres));
    }

    private String description() {
        return "Wire " + length(spring.wire()) + ", outside diameter " + length(spring.outsideDiameter())
                + ", free length "
                + length(spring.freeLength()) + ", at rest " + length(spring.lengthAtRest()) + ", at full travel "
                + length(spring.lengthAtFullTravel()) + ", solid " + length(spring.solidLength()) + ".";
    }
}
