package org.strawblue.app.report.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.app.report.picture.Mark.Anchor;
import org.strawblue.app.report.picture.Mark.Lettering;
import org.strawblue.app.report.picture.Mark.Point;
import org.strawblue.core.job.Picture.ClockPoint;
import org.strawblue.core.job.Picture.ClockTrace;
import org.strawblue.core.job.Picture.ColourSpan;
import org.strawblue.core.job.Picture.HeatClock;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/** Temperature against time, the wanted band lying, the time to pull standing, the film's colours along the foot. */
record ClockDrawing(HeatClock clock, AmountWriter writer) {

    private static final double LEFT = 34;
    private static final double TOP = 46;
    private static final double BOTTOM = 200;
    private static final double STRIP = 12;
    private static final double LINE = 12;
    private static final int STEPS = 80;
    /** Letters may be somewhat wider than is reckoned. */
    private static final double SPARE = 1.12;

    /** Share of the scale from which two curves can be named where they lie apart. */
    private static final double PARTED = 0.2;

    Drawing draw() {
        Sheet sheet = new Sheet();
        Axis x = new Axis(0, end(), LEFT, right());
        Axis y = temperatureAxis();
        drawGrid(sheet, x, y);
        clock.wanted().ifPresent(w -> {
            double low = y.within(w.low());
            double high = y.within(w.high());
            sheet.box(Pen.WANTED, LEFT, high, right() - LEFT, low - high);
        });
        drawDoubt(sheet, x, y);
        clock.traces().forEach(t -> drawTrace(sheet, t, x, y));
        if (namedApart()) {
            drawApart(sheet, x, y);
        } else {
            drawNames(sheet, y);
        }
        clock.pull().ifPresent(p -> drawPull(sheet, p, x));
        clock.colours().forEach(c -> drawColour(sheet, c, x));
        return sheet.drawing("Temperature against time", description(), BOTTOM + strip() + 34);
    }

    /** Height of the colours' strip, where there are any. */
    private double strip() {
        return clock.colours().isEmpty() ? 0 : STRIP;
    }

    private double end() {
        return points().stream().mapToDouble(ClockPoint::seconds).max().orElse(1);
    }

    private List<ClockPoint> points() {
        return clock.traces().stream().flatMap(t -> t.points().stream()).toList();
    }

    private Axis temperatureAxis() {
        double low = points().stream().mapToDouble(ClockPoint::low).min().orElse(0);
        double high = points().stream().mapToDouble(ClockPoint::high).max().orElse(1);
        double top = Math.max(high, clock.wanted().map(Band::high).orElse(high));
        return new Axis(low, top + (top - low) * 0.05 + 1, BOTTOM, TOP);
    }

    private void drawGrid(Sheet sheet, Axis x, Axis y) {
        Unit degree = Units.of(Dimension.TEMPERATURE, writer.system() == UnitSystem.METRIC ? "°C" : "°F");
        Axis own = new Axis(degree.fromSi(y.from()), degree.fromSi(y.to()), BOTTOM, TOP);
        for (double t : own.ticks(6)) {
            sheet.line(Pen.GRID, LEFT, own.at(t), right(), own.at(t));
            sheet.label(Long.toString(Math.round(t)), LEFT - 5, own.at(t) + 3.5, Lettering.SMALL, Anchor.END);
        }
        Unit unit =
                Units.of(Dimension.TIME, end() > Units.of(Dimension.TIME, "min").toSi(3) ? "min" : "s");
        Axis time = new Axis(0, unit.fromSi(end()), LEFT, right());
        for (double t : time.ticks(6)) {
            double at = time.at(t);
            sheet.line(Pen.GRID, at, TOP, at, BOTTOM);
            sheet.label(number(t), at, BOTTOM + strip() + 14, Lettering.SMALL, Anchor.MIDDLE);
        }
        sheet.label(degree.symbol(), LEFT - 5, TOP - 8, Lettering.SMALL, Anchor.END);
        sheet.label("time, " + unit.symbol(), right(), BOTTOM + strip() + 28, Lettering.SMALL, Anchor.END);
        sheet.line(Pen.THIN, LEFT, TOP, LEFT, BOTTOM).line(Pen.THIN, LEFT, BOTTOM, right(), BOTTOM);
    }

    private static String number(double t) {
        return t == Math.rint(t) ? Long.toString(Math.round(t)) : Double.toString(Math.round(t * 100) / 100.0);
    }

    /** From the lowest any place may have to the highest. */
    private void drawDoubt(Sheet sheet, Axis x, Axis y) {
        List<Point> upper = new ArrayList<>();
        List<Point> lower = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double t = end() * i / STEPS;
            double high = clock.traces().stream()
                    .mapToDouble(c -> c.at(t).high())
                    .max()
                    .orElse(0);
            double low = clock.traces().stream()
                    .mapToDouble(c -> c.at(t).low())
                    .min()
                    .orElse(0);
            upper.add(new Point(x.at(t), y.at(high)));
            lower.add(new Point(x.at(t), y.at(low)));
        }
        Collections.reverse(lower);
        upper.addAll(lower);
        sheet.path(Pen.BAND, upper, true);
    }

    private static void drawTrace(Sheet sheet, ClockTrace trace, Axis x, Axis y) {
        sheet.path(
                Pen.CURVE,
                trace.points().stream()
                        .map(p -> new Point(x.at(p.seconds()), y.at(p.kelvin())))
                        .toList(),
                false);
    }

    /** Each curve's name at its end, one below the other where they lie together. */
    private void drawNames(Sheet sheet, Axis y) {
        List<ClockTrace> sorted = new ArrayList<>(clock.traces());
        sorted.sort(Comparator.comparingDouble((ClockTrace t) -> -t.at(end()).kelvin()));
        double free = TOP;
        for (int i = 0; i < sorted.size(); i++) {
            double own = y.at(sorted.get(i).at(end()).kelvin()) + 3.5;
            double at = Math.max(free, Math.min(own, BOTTOM - LINE * (sorted.size() - 1 - i)));
            sheet.label(sorted.get(i).place(), right() + 4, at, Lettering.SMALL, Anchor.START);
            free = at + LINE;
        }
    }

    /** Where two curves lie apart, though they end as one: each name at its own curve there. */
    private void drawApart(Sheet sheet, Axis x, Axis y) {
        double t = widest();
        ClockTrace upper = upperAt(t);
        for (ClockTrace trace : clock.traces()) {
            double px = x.at(t);
            double py = y.at(trace.at(t).kelvin());
            if (trace.equals(upper)) {
                sheet.label(trace.place(), px - 3, py - 6, Lettering.SMALL, Anchor.END);
            } else {
                sheet.label(trace.place(), px + 6, Math.min(py + 14, BOTTOM - 5), Lettering.SMALL, Anchor.START);
            }
        }
    }

    private ClockTrace upperAt(double t) {
        return clock.traces().stream()
                .max(Comparator.comparingDouble(c -> c.at(t).kelvin()))
                .orElseThrow();
    }

    /** When two curves lie furthest apart [s]. */
    private double widest() {
        double best = 0;
        double widest = -1;
        for (int i = 0; i <= STEPS; i++) {
            double t = end() * i / STEPS;
            double apart = apart(t);
            if (apart > widest) {
                widest = apart;
                best = t;
            }
        }
        return best;
    }

    private double apart(double t) {
        return Math.abs(clock.traces().get(0).at(t).kelvin()
                - clock.traces().get(1).at(t).kelvin());
    }

    /** How far two curves lie apart somewhere though they end together [K]; 0 where their ends can be told apart. */
    private double parting() {
        if (clock.traces().size() != 2) {
            return 0;
        }
        double most = apart(widest());
        return apart(end()) < most / 4 ? most : 0;
    }

    /** Whether each curve is named where they lie apart, and not beside the field. */
    private boolean namedApart() {
        Axis y = temperatureAxis();
        return parting() > PARTED * (y.to() - y.from());
    }

    private double right() {
        boolean inside = namedApart();
        double widest = clock.traces().stream()
                .filter(t -> !inside)
                .mapToDouble(t -> Lettering.SMALL.width(t.place()))
                .max()
                .orElse(0);
        return Drawing.WIDTH - widest * SPARE - 12;
    }

    private void drawPull(Sheet sheet, Band pull, Axis x) {
        double x1 = x.within(pull.low());
        double x2 = x.within(pull.high());
        double level = TOP - 20;
        sheet.box(Pen.METAL, x1, TOP, x2 - x1, BOTTOM - TOP);
        sheet.line(Pen.THIN, x1, level, x1, BOTTOM).line(Pen.THIN, x2, level, x2, BOTTOM);
        sheet.line(Pen.OUTLINE, x1, level, x2, level);
        String text = "pull at " + writer.write(pull);
        double half = Lettering.STRONG.width(text) / 2;
        double middle = Math.max(LEFT + half, Math.min(right() - half, (x1 + x2) / 2));
        sheet.label(text, middle, level - 6, Lettering.STRONG, Anchor.MIDDLE);
    }

    private static void drawColour(Sheet sheet, ColourSpan span, Axis x) {
        double from = x.within(span.from());
        sheet.field(span.hex(), from, BOTTOM + 1, x.within(span.to()) - from, STRIP - 1);
    }

    private String description() {
        StringBuilder text = new StringBuilder();
        for (ClockTrace trace : clock.traces()) {
            ClockPoint last = trace.points().get(trace.points().size() - 1);
            text.append(trace.place()).append(": ");
            text.append(writer.write(Quantity.temperature(last.kelvin())));
            text.append(" after ")
                    .append(writer.write(Quantity.time(last.seconds())))
                    .append("; ");
        }
        clock.wanted().ifPresent(w -> text.append("wanted ").append(writer.write(w)));
        clock.pull().ifPresent(p -> text.append("; pull at ").append(writer.write(p)));
        return text.append('.').toString();
    }
}
