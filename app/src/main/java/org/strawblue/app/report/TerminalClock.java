package org.strawblue.app.report;

import java.util.stream.Collectors;
import org.strawblue.core.job.Picture.ClockPoint;
import org.strawblue.core.job.Picture.HeatClock;
import org.strawblue.core.quantity.Quantity;

/** The temperature clock in characters: a line for each of some times, the time to pull marked. */
record TerminalClock(HeatClock clock, AmountWriter writer) {

    private static final int ROWS = 12;
    /** Steps in which a person reads a clock [s]. */
    private static final int[] STEPS = {1, 2, 5, 10, 15, 30, 60, 120, 180, 300, 600, 900, 1800, 3600, 7200, 14400};

    private static final int TIME = 12;
    private static final int CELL = 18;
    private static final int NARROW = 9;
    private static final int COLOUR = 12;
    private static final String PULL = "→ ";
    private static final String BEFORE = "  ";

    void write(TextBlock out, int indent) {
        out.hanging(indent, "", Text.clean(writer.write(clock.caption())) + ":");
        rows(out, indent);
    }

    /** The rows without the caption; in one unit alone where both have no room. */
    void rows(TextBlock out, int indent) {
        int room = out.width(indent) - BEFORE.length() - TIME - COLOUR;
        boolean both = room >= clock.traces().size() * CELL;
        int cell = both
                ? CELL
                : Math.max(NARROW, Math.min(CELL, room / clock.traces().size()));
        out.line(
                indent,
                BEFORE
                        + column("", TIME)
                        + clock.traces().stream()
                                .map(t -> column(t.place(), cell))
                                .collect(Collectors.joining()));
        double end = clock.traces().stream()
                .flatMap(t -> t.points().stream())
                .mapToDouble(ClockPoint::seconds)
                .max()
                .orElse(0);
        double step = step(end);
        for (double t = 0; t < end - step / 4; t += step) {
            out.line(indent, row(t, both, cell));
        }
        out.line(indent, row(end, both, cell));
    }

    /** A round step that gives about so many rows [s]. */
    private static double step(double end) {
        for (int step : STEPS) {
            if (end / step <= ROWS) {
                return step;
            }
        }
        return end / ROWS;
    }

    private String row(double seconds, boolean both, int cell) {
        boolean pull = clock.pull().filter(b -> b.contains(seconds)).isPresent();
        return (pull ? PULL : BEFORE)
                + column(TimeWriter.watch(seconds), TIME)
                + clock.traces().stream()
                        .map(t -> column(temperature(t.at(seconds), both), cell))
                        .collect(Collectors.joining())
                + colour(seconds);
    }

    private String temperature(ClockPoint point, boolean both) {
        Quantity kelvin = Quantity.temperature(point.kelvin());
        return both ? writer.write(kelvin) : writer.first(kelvin);
    }

    private String colour(double seconds) {
        return clock.colours().stream()
                .filter(c -> c.from() <= seconds && seconds <= c.to())
                .map(c -> Text.clean(c.name()))
                .findFirst()
                .orElse("");
    }

    private static String column(String text, int width) {
        return text + " ".repeat(Math.max(1, width - Wrap.length(text)));
    }
}
