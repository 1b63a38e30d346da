package org.strawblue.app.report;

import java.util.List;
import org.strawblue.app.service.Entry;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.source.Source;

/** The answer to one question as text for a terminal or a pipe. */
public final class SheetText {

    private static final int INDENT = 2;

    private final UnitSystem system;
    private final Screen screen;
    private final TextBlock out;

    private SheetText(UnitSystem system, Screen screen) {
        this.system = system;
        this.screen = screen;
        this.out = new TextBlock(screen);
    }

    public static String write(Sheet sheet, UnitSystem system, Screen screen) {
        SheetText text = new SheetText(system, screen);
        text.sheet(sheet);
        return text.out.toString();
    }

    private void sheet(Sheet sheet) {
        out.strong(0, sheet.title());
        int widest = sheet.entries().stream()
                .filter(e -> !(e instanceof Entry.Plot))
                .mapToInt(e -> Wrap.length(e.label()))
                .max()
                .orElse(0);
        int column = Math.min(widest, screen.columns() / 2);
        for (Entry entry : sheet.entries()) {
            if (entry instanceof Entry.Plot plot) {
                plot(plot);
            } else {
                out.columns(INDENT, entry.label(), column, value(entry));
            }
        }
        sheet.findings().forEach(this::finding);
        footnotes(sheet);
    }

    private void plot(Entry.Plot plot) {
        AmountWriter writer = new AmountWriter(system);
        out.gap().line(INDENT, Text.of(plot.clock().caption()).in(system) + ":");
        TerminalPlot drawn = new TerminalPlot(plot.clock(), writer, screen, out, INDENT);
        drawn.write();
        out.gap();
        drawn.colours(plot.clock().traces().get(0).place());
        new TerminalClock(plot.clock(), writer).rows(out, INDENT);
        out.gap();
    }

    private String value(Entry entry) {
        if (entry instanceof Entry.Number number) {
            String value = Text.of(number.estimate()).in(system);
            return number.estimate().weak() ? value + " " + Footnotes.MARK : value;
        }
        if (entry instanceof Entry.Given given) {
            return new AmountWriter(system).write(given.quantity());
        }
        if (entry instanceof Entry.Limits limits) {
            return new AmountWriter(system).write(limits.band());
        }
        if (entry instanceof Entry.Words words) {
            return Text.of(words.phrase()).in(system);
        }
        Entry.Colour colour = (Entry.Colour) entry;
        return screen.colours() ? screen.patch(colour.hex()).repeat(4) + " " + colour.name() : colour.name();
    }

    private void finding(Finding finding) {
        out.gap().strong(0, word(finding) + Text.of(finding.what()).in(system));
        Text why = Text.of(finding.why());
        Text remedy = Text.of(finding.remedy());
        if (!why.isBlank()) {
            out.hanging(INDENT, "", why.in(system));
        }
        if (!remedy.isBlank()) {
            out.hanging(INDENT, "→ ", remedy.in(system));
        }
    }

    private static String word(Finding finding) {
        if (finding instanceof Finding.Stop) {
            return "STOP: ";
        }
        return finding instanceof Finding.Caution ? "▲ Caution: " : "Note: ";
    }

    private void footnotes(Sheet sheet) {
        Footnotes notes = Footnotes.of(sheet.bases());
        if (sheet.bases().isEmpty()) {
            return;
        }
        out.gap().faint(0, "In brackets: in four cases of five the truth lies there.");
        for (Footnotes.Weak weak : notes.weak()) {
            out.faint(0, Footnotes.MARK + " ", weak.word() + ": " + String.join("; ", weak.what()) + ".");
        }
        List<String> titles = notes.sources().stream().map(Source::title).toList();
        if (!titles.isEmpty()) {
            out.faint(0, "Sources: " + String.join("; ", titles) + ".");
        }
    }
}
