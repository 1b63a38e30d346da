package org.strawblue.app.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.strawblue.app.report.picture.Ticks;
import org.strawblue.core.job.Picture.ClockPoint;
import org.strawblue.core.job.Picture.ClockTrace;
import org.strawblue.core.job.Picture.ColourSpan;
import org.strawblue.core.job.Picture.HeatClock;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/**
 * Temperature against time drawn in characters: a curve for each place with its name at the end, the interval dotted, the wanted
 * band shaded, the time to take the part off marked below, and the film's colours along the foot.
 */
final class TerminalPlot {

    private static final int ROWS = 16;
    private static final int AXIS = 6;
    private static final int LEAST = 20;
    private static final int EVERY = 3;
    private static final int TICKS = 5;
    private static final Unit MINUTE = Units.of(Dimension.TIME, "min");
    private static final Unit HOUR = Units.of(Dimension.TIME, "h");

    private final HeatClock clock;
    private final AmountWriter writer;
    private final Screen screen;
    private final TextBlock out;
    private final int indent;
    private final int width;
    private final Unit degree;
    private final double end;
    private final double low;
    private final double high;
    private final double step;

    TerminalPlot(HeatClock clock, AmountWriter writer, Screen screen, TextBlock out, int indent) {
        this.clock = clock;
        this.writer = writer;
        this.screen = screen;
        this.out = out;
        this.indent = indent;
        int names = clock.traces().stream()
                .mapToInt(t -> Wrap.length(t.place()))
                .max()
                .orElse(0);
        this.width = Math.max(LEAST, out.width(indent) - AXIS - names - 1);
        this.degree = Units.of(Dimension.TEMPERATURE, writer.system() == UnitSystem.METRIC ? "°C" : "°F");
        this.end = points().stream().mapToDouble(ClockPoint::seconds).max().orElse(1);
        double coldest = points().stream().mapToDouble(ClockPoint::low).min().orElse(0);
        double hottest = points().stream().mapToDouble(ClockPoint::high).max().orElse(1);
        double top = Math.max(hottest, clock.wanted().map(Band::high).orElse(hottest));
        this.step = Ticks.step(Math.max(1, degree.fromSi(top) - degree.fromSi(coldest)) / TICKS);
        this.low = Math.floor(degree.fromSi(coldest) / step) * step;
        this.high = Math.max(low + step, Math.ceil(degree.fromSi(top) / step) * step);
    }

    private List<ClockPoint> points() {
        return clock.traces().stream().flatMap(t -> t.points().stream()).toList();
    }

    void write() {
        DotField field = new DotField(width, ROWS, screen.unicode());
        curves(field);
        Map<Integer, String> names = names();
        out.line(indent, " ".repeat(AXIS - 3) + degreeSign());
        for (int row = 0; row < ROWS; row++) {
            String name = names.getOrDefault(row, "");
            out.line(indent, axis(row) + line(field, row) + (name.isEmpty() ? "" : " " + name));
        }
        foot();
        pull();
        ribbon();
    }

    private String degreeSign() {
        return screen.unicode() ? degree.symbol() : degree.symbol().replace("°", "");
    }

    /** A tick where a round temperature lies. */
    private String axis(int row) {
        String figure = "";
        for (double t = low; t <= high + step / 2; t += step) {
            if ((int) Math.round(down(t, ROWS - 1)) == row) {
                figure = Long.toString(Math.round(t));
            }
        }
        String edge = screen.unicode() ? figure.isEmpty() ? "│" : "┤" : figure.isEmpty() ? "|" : "+";
        return " ".repeat(Math.max(0, AXIS - 2 - figure.length())) + figure + " " + edge;
    }

    private double down(double degrees, int most) {
        return (high - degrees) / (high - low) * most;
    }

    private void curves(DotField field) {
        if (!clock.traces().isEmpty()) {
            edge(field, true);
            edge(field, false);
        }
        clock.traces().forEach(t -> curve(field, t));
    }

    private void curve(DotField field, ClockTrace trace) {
        int before = dotRow(field, trace, 0);
        for (int x = 0; x < field.across(); x++) {
            int y = dotRow(field, trace, x);
            int from = Math.min(y, before < y ? before + 1 : before > y ? before - 1 : y);
            int to = Math.max(y, before < y ? before + 1 : before > y ? before - 1 : y);
            for (int k = from; k <= to; k++) {
                field.dot(x, k, trace.place().charAt(0), true);
            }
            before = y;
        }
    }

    private int dotRow(DotField field, ClockTrace trace, int x) {
        ClockPoint p = trace.at(time(field, x));
        return (int) Math.round(down(degree.fromSi(p.kelvin()), field.down() - 1));
    }

    private double time(DotField field, int x) {
        return end * x / (field.across() - 1);
    }

    /** The outer edge of all the intervals, dotted. */
    private void edge(DotField field, boolean upper) {
        for (int x = 0; x < field.across(); x += field.across() > width ? EVERY : EVERY - 1) {
            double t = time(field, x);
            double k = clock.traces().stream()
                    .mapToDouble(c -> upper ? c.at(t).high() : -c.at(t).low())
                    .max()
                    .orElse(0);
            double degrees = degree.fromSi(upper ? k : -k);
            field.dot(x, (int) Math.round(down(degrees, field.down() - 1)), '.', false);
        }
    }

    /** The curves' names beside their ends, each on a row of its own. */
    private Map<Integer, String> names() {
        Map<Integer, String> rows = new LinkedHashMap<>();
        List<ClockTrace> sorted = new ArrayList<>(clock.traces());
        sorted.sort(Comparator.comparingDouble((ClockTrace t) -> -t.at(end).kelvin()));
        int next = 0;
        for (int i = 0; i < sorted.size(); i++) {
            int own = (int) Math.round(down(degree.fromSi(sorted.get(i).at(end).kelvin()), ROWS - 1));
            int room = ROWS - sorted.size() + i;
            next = Math.max(next, Math.min(own, room));
            rows.put(next++, Text.clean(sorted.get(i).place()));
        }
        return rows;
    }

    private String line(DotField field, int row) {
        StringBuilder line = new StringBuilder();
        boolean wanted = wanted(row);
        for (int c = 0; c < width; c++) {
            if (field.empty(c, row)) {
                line.append(wanted ? screen.faint(screen.unicode() ? "░" : "-") : " ");
            } else {
                String mark = String.valueOf(field.at(c, row));
                line.append(field.faint(c, row) ? screen.faint(mark) : mark);
            }
        }
        return line.toString();
    }

    private boolean wanted(int row) {
        double half = (high - low) / (ROWS - 1) / 2;
        double middle = high - (high - low) * row / (ROWS - 1);
        return clock.wanted()
                .filter(b -> degree.fromSi(b.low()) <= middle + half && degree.fromSi(b.high()) >= middle - half)
                .isPresent();
    }

    private void foot() {
        Unit unit = end >= HOUR.toSi(2) ? HOUR : end >= MINUTE.toSi(3) ? MINUTE : Units.of(Dimension.TIME, "s");
        double whole = unit.fromSi(end);
        double every = Ticks.step(whole / Math.max(2, width / 9.0));
        StringBuilder line = new StringBuilder((screen.unicode() ? "─" : "-").repeat(width));
        StringBuilder figures = new StringBuilder(" ".repeat(width + AXIS));
        for (double t = 0; t <= whole * (1 + 1e-9); t += every) {
            int c = column(unit.toSi(t));
            line.setCharAt(c, screen.unicode() ? '┴' : '+');
            put(figures, AXIS + c, number(t));
        }
        out.line(indent, " ".repeat(AXIS - 1) + (screen.unicode() ? "└" : "+") + line);
        out.line(indent, figures.toString().stripTrailing() + " " + unit.symbol());
    }

    private static String number(double t) {
        return Math.abs(t - Math.rint(t)) < 1e-9
                ? Long.toString(Math.round(t))
                : Double.toString(Math.round(t * 100) / 100.0);
    }

    private static void put(StringBuilder line, int middle, String text) {
        int from = middle - text.length() / 2;
        while (line.length() < from + text.length()) {
            line.append(' ');
        }
        line.replace(from, from + text.length(), text);
    }

    private int column(double seconds) {
        return (int) Math.max(0, Math.min(width - 1, Math.round(seconds / end * (width - 1))));
    }

    private void pull() {
        if (clock.pull().isEmpty()) {
            return;
        }
        Band pull = clock.pull().get();
        int from = column(pull.low());
        int to = column(Math.min(end, pull.high()));
        String marks = (screen.unicode() ? "▲" : "^").repeat(to - from + 1);
        String text = "take it off at " + Text.clean(writer.write(pull));
        text = screen.unicode() ? text : text.replace('–', '-');
        int left = AXIS + from - 1 - Wrap.length(text);
        if (AXIS + to + 2 + Wrap.length(text) <= out.width(indent)) {
            out.line(indent, " ".repeat(AXIS + from) + screen.strong(marks + " " + text));
        } else if (left >= 0) {
            out.line(indent, " ".repeat(left) + screen.strong(text + " " + marks));
        } else {
            out.line(indent, " ".repeat(AXIS + from) + screen.strong(marks));
            out.strong(indent, text);
        }
    }

    private void ribbon() {
        if (clock.colours().isEmpty()) {
            return;
        }
        if (screen.colours()) {
            StringBuilder row = new StringBuilder();
            for (int c = 0; c < width; c++) {
                String hex = colour(end * c / (width - 1));
                row.append(hex.isEmpty() ? " " : screen.patch(hex));
            }
            out.line(indent, " ".repeat(AXIS) + row);
        }
        out.line(indent, " ".repeat(AXIS) + colourNames());
    }

    private String colour(double seconds) {
        return clock.colours().stream()
                .filter(s -> s.from() <= seconds && seconds <= s.to())
                .map(ColourSpan::hex)
                .findFirst()
                .orElse("");
    }

    /** Each name where its colour begins, a stroke alone where there is no room for it. */
    private String colourNames() {
        StringBuilder row = new StringBuilder(" ".repeat(width));
        List<ColourSpan> runs = runs();
        for (int i = 0; i < runs.size(); i++) {
            int from = column(runs.get(i).from());
            int to = i + 1 < runs.size() ? column(runs.get(i + 1).from()) : width;
            String name =
                    (screen.unicode() ? "│" : "|") + Text.clean(runs.get(i).name());
            String cut = name.length() <= to - from ? name : name.substring(0, 1);
            row.replace(from, Math.min(width, from + cut.length()), cut);
        }
        return row.substring(0, width);
    }

    private List<ColourSpan> runs() {
        List<ColourSpan> runs = new ArrayList<>();
        for (ColourSpan span : clock.colours()) {
            if (runs.isEmpty() || !runs.get(runs.size() - 1).name().equals(span.name())) {
                runs.add(span);
            }
        }
        return runs;
    }

    /** When each colour comes, in words. */
    void colours(String place) {
        List<ColourSpan> runs = runs();
        if (runs.isEmpty()) {
            return;
        }
        List<String> words = runs.stream()
                .map(r -> Text.clean(r.name()) + " from " + TimeWriter.watch(Math.max(0, r.from())))
                .toList();
        out.hanging(indent, "", "Film colour, " + place + ": " + String.join(", ", words) + ".");
    }
}
