package org.strawblue.app.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.strawblue.core.job.Picture.ColourRibbon;
import org.strawblue.core.job.Picture.Swatch;
import org.strawblue.core.quantity.Quantity;

/** The colour ribbon in characters: a strip of patches where the terminal has colours, and the names in either case. */
record TerminalRibbon(ColourRibbon ribbon, AmountWriter writer, Screen screen) {

    private static final int STRIP_ROWS = 2;
    private static final int PATCH = 4;
    private static final String AIM = "→ ";
    private static final String NO_AIM = "  ";

    void write(TextBlock out, int indent) {
        out.hanging(indent, "", Text.clean(writer.write(ribbon.caption())) + ", each from:");
        if (screen.colours()) {
            strip(out, indent);
        }
        names(out, indent);
    }

    private void strip(TextBlock out, int indent) {
        int width = out.width(indent);
        StringBuilder row = new StringBuilder();
        StringBuilder marks = new StringBuilder();
        for (int i = 0; i < width; i++) {
            Swatch swatch = at(i, width);
            row.append(screen.patch(swatch.hex()));
            marks.append(ribbon.target().contains(swatch.kelvin()) ? '▲' : ' ');
        }
        for (int i = 0; i < STRIP_ROWS; i++) {
            out.line(indent, row.toString());
        }
        out.line(indent, marks.toString());
    }

    private Swatch at(int column, int width) {
        List<Swatch> swatches = ribbon.swatches();
        return swatches.get(Math.min(swatches.size() - 1, column * swatches.size() / width));
    }

    /** Each name with the temperature at which it first comes; the ones to aim for are marked. */
    private void names(TextBlock out, int indent) {
        Map<String, Swatch> firsts = new LinkedHashMap<>();
        ribbon.swatches().forEach(s -> firsts.putIfAbsent(s.name(), s));
        int widest = firsts.keySet().stream().mapToInt(Wrap::length).max().orElse(0);
        firsts.forEach((name, first) -> {
            String from = writer.write(Quantity.temperature(first.kelvin()));
            boolean roomy = out.width(indent) >= PATCH + 2 + widest + 2 + Wrap.length(from);
            String label = (aimedAt(name) ? AIM : NO_AIM) + name;
            String patch = screen.colours() ? screen.patch(middle(name).hex()).repeat(PATCH - 1) + " " : "";
            String text = label + (roomy ? " ".repeat(widest - Wrap.length(name) + 2) : " ") + from;
            for (String line : roomy ? List.of(text) : Wrap.lines(text, out.width(indent + PATCH))) {
                out.line(indent, patch + (aimedAt(name) ? screen.strong(line) : line));
            }
        });
    }

    private boolean aimedAt(String name) {
        return ribbon.swatches().stream()
                .anyMatch(s -> s.name().equals(name) && ribbon.target().contains(s.kelvin()));
    }

    private Swatch middle(String name) {
        List<Swatch> of =
                ribbon.swatches().stream().filter(s -> s.name().equals(name)).toList();
        return of.get(of.size() / 2);
    }
}
