package org.strawblue.app.cli;

import java.util.List;
import java.util.stream.Collectors;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.app.service.Entry;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.source.Bibliography;
import org.strawblue.core.source.Source;

/** An answer as text. */
record SheetText(UnitSystem system, Terminal terminal) {

    private static final String WEAK = " *";

    String write(Sheet sheet) {
        StringBuilder out = new StringBuilder(sheet.title()).append('\n');
        int widest =
                sheet.entries().stream().mapToInt(e -> e.label().length()).max().orElse(0);
        for (Entry entry : sheet.entries()) {
            String label =
                    "  " + entry.label() + " ".repeat(widest - entry.label().length()) + "  ";
            append(out, label, value(entry), widest + 4);
        }
        sheet.findings().forEach(f -> finding(out, f));
        foot(out, sheet);
        return out.toString();
    }

    private String value(Entry entry) {
        AmountWriter writer = new AmountWriter(system);
        if (entry instanceof Entry.Number number) {
            return writer.write(number.estimate()) + (number.estimate().weak() ? WEAK : "");
        }
        if (entry instanceof Entry.Limits limits) {
            return writer.write(limits.band());
        }
        if (entry instanceof Entry.Given given) {
            return writer.write(given.quantity());
        }
        if (entry instanceof Entry.Words words) {
            return writer.write(words.phrase());
        }
        Entry.Colour colour = (Entry.Colour) entry;
        return swatch(colour.hex()) + colour.name();
    }

    private String swatch(String hex) {
        if (!terminal.trueColour()) {
            return "";
        }
        int rgb = Integer.parseInt(hex.substring(1), 16);
        return "\u001b[48;2;" + (rgb >> 16) + ";" + (rgb >> 8 & 0xff) + ";" + (rgb & 0xff) + "m    \u001b[0m ";
    }

    private void finding(StringBuilder out, Finding finding) {
        AmountWriter writer = new AmountWriter(system);
        out.append('\n');
        append(out, word(finding), writer.write(finding.what()), 2);
        append(out, "  ", writer.write(finding.why()), 2);
        append(out, "  → ", writer.write(finding.remedy()), 4);
    }

    private static String word(Finding finding) {
        if (finding instanceof Finding.Stop) {
            return "STOP: ";
        }
        return finding instanceof Finding.Caution ? "Caution: " : "Note: ";
    }

    /** Where the numbers come from, and which of them stand on memory or assumption. */
    private void foot(StringBuilder out, Sheet sheet) {
        List<Entry.Number> numbers = sheet.entries().stream()
                .filter(Entry.Number.class::isInstance)
                .map(Entry.Number.class::cast)
                .toList();
        String sources = numbers.stream()
                .flatMap(n -> n.estimate().bases().stream())
                .map(b -> Bibliography.find(b.source()).map(Source::title).orElse(b.source()))
                .distinct()
                .collect(Collectors.joining("; "));
        if (!numbers.isEmpty()) {
            out.append('\n');
            append(out, "In brackets: four chances in five that the truth lies there. ", "From: " + sources + ".", 0);
        }
        if (numbers.stream().anyMatch(n -> n.estimate().weak())) {
            append(out, "* ", "stands in part on memory or assumption.", 2);
        }
    }

    /** Breaks lines between words. */
    private void append(StringBuilder out, String head, String text, int indent) {
        if (text.isBlank()) {
            return;
        }
        StringBuilder line = new StringBuilder(head);
        boolean fresh = true;
        for (String word : text.split(" ")) {
            if (!fresh && line.length() + 1 + word.length() > terminal.columns()) {
                out.append(line).append('\n');
                line = new StringBuilder(" ".repeat(indent));
                fresh = true;
            }
            line.append(fresh ? "" : " ").append(word);
            fresh = false;
        }
        out.append(line).append('\n');
    }
}
