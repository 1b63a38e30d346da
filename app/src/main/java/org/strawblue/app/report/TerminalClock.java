package org.strawblue.app.report;

import java.util.List;
import java.util.stream.Collectors;
import org.strawblue.core.job.Picture.ClockPoint;
import org.strawblue.core.job.Picture.ClockTrace;
import org.strawblue.core.job.Picture.HeatClock;
import org.strawblue.core.quantity.Quantity;

/** The temperature clock in characters: a line for each of some times, the time to pull marked. */
record TerminalClock(HeatClock clock, AmountWriter writer) {

    private static final int ROWS = 10;
    private static final int TIME = 9;
    private static final int CELL = 18;
    private static final String PULL = "→ ";
    private static final String BEFORE = "  ";

    void write(TextBlock out, int indent) {
        out.hanging(indent, "", Text.clean(writer.write(clock.caption())) + ":");
        out.line(
                indent,
                BEFORE
                        + column("", TIME)
                        + clock.traces().stream()
                                .map(t -> column(t.place(), CELL))
                                .collect(Collectors.joining()));
        List<ClockPoint> first = clock.traces().get(0).points();
        int step = Math.max(1, first.size() / ROWS);
        for (int i = 0; i < first.size(); i += step) {
            out.line(indent, row(first.get(i), i));
        }
    }

    private String row(ClockPoint at, int i) {
        boolean pull = clock.pull().filter(b -> b.contains(at.seconds())).isPresent();
        return (pull ? PULL : BEFORE)
                + column(writer.write(Quantity.time(at.seconds())), TIME)
                + clock.traces().stream()
                        .map(t -> column(temperature(t, i), CELL))
                        .collect(Collectors.joining())
                + colour(at.seconds());
    }

    private String temperature(ClockTrace trace, int i) {
        return i < trace.points().size()
                ? writer.write(Quantity.temperature(trace.points().get(i).kelvin()))
                : "";
    }

    private String colour(double seconds) {
        return clock.colours().stream()
                .filter(c -> c.from() <= seconds && seconds < c.to())
                .map(c -> Text.clean(c.name()))
                .findFirst()
                .orElse("");
    }

    private static String column(String text, int width) {
        return text + " ".repeat(Math.max(1, width - Wrap.length(text)));
    }
}
