package org.strawblue.app.report.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.app.report.picture.Mark.Anchor;
import org.strawblue.app.report.picture.Mark.Lettering;
import org.strawblue.core.job.Picture.ColourRibbon;
import org.strawblue.core.job.Picture.Swatch;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Quantity;

/** The film colours over temperature as one ribbon, each colour named, the temperatures to aim for bracketed. */
record RibbonDrawing(ColourRibbon ribbon, AmountWriter writer) {

    private static final double LEFT = 10;
    private static final double RIGHT = Drawing.WIDTH - 10;
    private static final double TOP = 66;
    private static final double BOTTOM = 122;
    private static final double NAMES = 152;
    private static final double ROW = 15;

    /** Neighbouring swatches of one name. */
    private record Run(String name, double from, double to) {
        double middle() {
            return (from + to) / 2;
        }
    }

    Drawing draw() {
        Sheet sheet = new Sheet();
        Axis axis = axis();
        sheet.label(
                "held " + writer.write(Quantity.time(ribbon.seconds())) + ", seen in " + ribbon.light(),
                LEFT,
                12,
                Lettering.PLAIN,
                Anchor.START);
        drawSwatches(sheet, axis);
        TemperatureScale scale = new TemperatureScale(axis, writer.system());
        scale.drawBelow(sheet, BOTTOM);
        scale.drawAbove(sheet, TOP, Optional.of(ribbon.target()));
        drawTarget(sheet, axis);
        int rows = drawNames(sheet, runs(axis));
        return sheet.drawing("Temper colours", description(), NAMES + rows * ROW);
    }

    private Axis axis() {
        List<Swatch> swatches = ribbon.swatches();
        double half = swatches.size() < 2
                ? 1
                : (swatches.get(1).kelvin() - swatches.get(0).kelvin()) / 2;
        return new Axis(
                swatches.get(0).kelvin() - half,
                swatches.get(swatches.size() - 1).kelvin() + half,
                LEFT,
                RIGHT);
    }

    private void drawSwatches(Sheet sheet, Axis axis) {
        int count = ribbon.swatches().size();
        double width = (RIGHT - LEFT) / count;
        for (int i = 0; i < count; i++) {
            double overlap = i < count - 1 ? 0.5 : 0; // no hairline of the ground between neighbours
            sheet.field(ribbon.swatches().get(i).hex(), axis.start() + i * width, TOP, width + overlap, BOTTOM - TOP);
        }
    }

    private void drawTarget(Sheet sheet, Axis axis) {
        Band target = ribbon.target();
        double x1 = axis.within(target.low());
        double x2 = axis.within(target.high());
        double level = TOP - 20;
        sheet.line(Pen.OUTLINE, x1, level, x1, BOTTOM + 1);
        sheet.line(Pen.OUTLINE, x2, level, x2, BOTTOM + 1);
        sheet.line(Pen.OUTLINE, x1, level, x2, level);
        String text = "aim for " + writer.write(target);
        double half = Lettering.STRONG.width(text) / 2;
        double x = Math.max(LEFT + half, Math.min(RIGHT - half, (x1 + x2) / 2));
        sheet.label(text, x, level - 6, Lettering.STRONG, Anchor.MIDDLE);
    }

    private List<Run> runs(Axis axis) {
        List<Run> runs = new ArrayList<>();
        double width = (RIGHT - LEFT) / ribbon.swatches().size();
        for (int i = 0; i < ribbon.swatches().size(); i++) {
            String name = ribbon.swatches().get(i).name();
            double from = axis.start() + i * width;
            Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (last != null && last.name().equals(name)) {
                runs.set(runs.size() - 1, new Run(name, last.from(), from + width));
            } else {
                runs.add(new Run(name, from, from + width));
            }
        }
        return runs;
    }

    /** Names under the ribbon, each in the first row where it has room, with a leader up to its colour. */
    private static int drawNames(Sheet sheet, List<Run> runs) {
        List<Double> ends = new ArrayList<>();
        for (Run run : runs) {
            double width = Lettering.SMALL.width(run.name());
            double x = Math.max(LEFT, Math.min(RIGHT - width, run.middle() - width / 2));
            int row = 0;
            while (row < ends.size() && ends.get(row) > x - 6) {
                row++;
            }
            if (row == ends.size()) {
                ends.add(0.0);
            }
            ends.set(row, x + width);
            double y = NAMES + row * ROW;
            sheet.line(Pen.GRID, run.from(), BOTTOM, run.from(), BOTTOM + 4);
            sheet.line(Pen.HATCH, run.middle(), BOTTOM + 17, run.middle(), y - 9);
            sheet.label(run.name(), x, y, Lettering.SMALL, Anchor.START);
        }
        return ends.size();
    }

    private String description() {
        StringBuilder text = new StringBuilder("Aim for ")
                .append(writer.write(ribbon.target()))
                .append(". From cool to hot:");
        String before = "";
        for (Swatch swatch : ribbon.swatches()) {
            if (!swatch.name().equals(before)) {
                text.append(before.isEmpty() ? " " : ", ").append(swatch.name());
                text.append(" from ").append(writer.write(Quantity.temperature(swatch.kelvin())));
                before = swatch.name();
            }
        }
        return text.append('.').toString();
    }
}
