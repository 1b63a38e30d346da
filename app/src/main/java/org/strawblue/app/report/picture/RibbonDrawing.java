package org.strawblue.app.report.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    private static final double TOP = 46;
    private static final double BOTTOM = 102;
    private static final double LEGEND = 134;
    private static final double ROW = 16;
    private static final double CHIP = 16;
    private static final double GUTTER = 20;
    private static final double FIGURE = 60;

    /** Neighbouring swatches of one name: where they begin, the colour in their middle, whether to aim there. */
    private record Run(String name, double from, String hex, boolean aim) {}

    Drawing draw() {
        Sheet sheet = new Sheet();
        Axis axis = axis();
        drawSwatches(sheet, axis);
        TemperatureScale scale = new TemperatureScale(axis, writer.system());
        scale.drawBelow(sheet, BOTTOM);
        scale.drawAbove(sheet, TOP, Optional.of(ribbon.target()));
        drawTarget(sheet, axis);
        int rows = drawLegend(sheet, runs());
        return sheet.drawing("Temper colours", description(), LEGEND + rows * ROW);
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

    private List<Run> runs() {
        Map<String, List<Swatch>> byName = new LinkedHashMap<>();
        ribbon.swatches()
                .forEach(w ->
                        byName.computeIfAbsent(w.name(), n -> new ArrayList<>()).add(w));
        List<Run> runs = new ArrayList<>();
        byName.forEach((name, of) -> runs.add(new Run(
                name,
                of.get(0).kelvin(),
                of.get(of.size() / 2).hex(),
                of.stream().anyMatch(w -> ribbon.target().contains(w.kelvin())))));
        return runs;
    }

    /** The names under the ribbon, in two columns where they fit, each with its colour and where it begins. */
    private int drawLegend(Sheet sheet, List<Run> runs) {
        double widest = runs.stream()
                .mapToDouble(r -> Lettering.STRONG.width(r.name()))
                .max()
                .orElse(0);
        double half = (RIGHT - LEFT) / 2;
        int columns = widest + CHIP + FIGURE > half ? 1 : 2;
        int rows = (runs.size() + columns - 1) / columns;
        double column = columns == 1 ? RIGHT - LEFT : half;
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i);
            double x = LEFT + (i / rows) * (column + GUTTER / 2);
            double y = LEGEND + (i % rows) * ROW;
            Lettering lettering = run.aim() ? Lettering.STRONG : Lettering.SMALL;
            sheet.field(run.hex(), x, y - 9, CHIP, 11);
            sheet.label(run.name(), x + CHIP + 6, y, lettering, Anchor.START);
            String from = writer.first(Quantity.temperature(run.from()));
            sheet.label(from, x + column - GUTTER / 2, y, lettering, Anchor.END);
        }
        return rows;
    }

    private String description() {
        StringBuilder text = new StringBuilder("Held ")
                .append(writer.write(Quantity.time(ribbon.seconds())))
                .append(", seen by ")
                .append(ribbon.light())
                .append(". Aim for ")
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
