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

    void write(TextBlock out, int indent) {
        out.hanging(indent, "", writer.write(ribbon.caption()));
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
        for (Map.Entry<String, Swatch> entry : firsts.entrySet()) {
            String name = entry.getKey();
            boolean aim = ribbon.swatches().stream()
                    .anyMatch(s -> s.name().equals(name) && ribbon.target().contains(s.kelvin()));
            String patch = screen.colours() ? screen.patch(middle(name).hex()).repeat(3) + " " : "";
            String text = name + " ".repeat(widest - Wrap.length(name) + 2) + "from "
                    + writer.write(Quantity.temperature(entry.getValue().kelvin()));
            out.line(indent, patch + (aim ? screen.strong(text + "  ← aim") : text));
        }
    }

    private Swatch middle(String name) {
        List<Swatch> of =
                ribbon.swatches().stream().filter(s -> s.name().equals(name)).toList();
        return of.get(of.size() / 2);
    }
}
