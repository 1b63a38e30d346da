package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Prints problems for a person: the place, the line with what is wrong underlined, what was expected, what to do. */
public final class ProblemPrinter {

    private static final String RED = "\u001b[31m";
    private static final String BOLD = "\u001b[1m";
    private static final String PLAIN = "\u001b[0m";
    private static final int NARROWEST = 30;

    private final int width;
    private final boolean colour;

    /** @param width of the screen in characters; @param colour whether it can show colours */
    public ProblemPrinter(int width, boolean colour) {
        this.width = Math.max(NARROWEST, width);
        this.colour = colour;
    }

    /** All of them in the order of the file, with a count at the end. */
    public String print(List<Problem> problems) {
        StringBuilder out = new StringBuilder();
        problems.stream()
                .sorted(Comparator.comparing((Problem p) -> p.place().file())
                        .thenComparing(p -> p.place().line())
                        .thenComparing(p -> p.place().column()))
                .forEach(p -> out.append(print(p)).append('\n'));
        String count = problems.size() == 1 ? "1 problem" : problems.size() + " problems";
        return out.append(count).append(". Nothing was written.\n").toString();
    }

    /** One of them, ending in a line break. */
    public String print(Problem p) {
        List<String> lines = new ArrayList<>();
        Place place = p.place();
        lines.add(paint(
                BOLD, place.line() == 0 ? place.file() : place.file() + ":" + place.line() + ":" + place.column()));
        if (place.line() > 0 && !place.text().isBlank()) {
            underline(place, lines);
        }
        lines.addAll(wrap("read: ", p.read().isBlank() ? "nothing" : p.read()));
        lines.addAll(wrap("expected: ", p.expected()));
        p.nearest().ifPresent(word -> lines.addAll(wrap("did you mean: ", word)));
        lines.addAll(wrap("do: ", p.remedy()));
        return String.join("\n", lines) + "\n";
    }

    /** The line and marks below it; of a long line, the piece around the place. */
    private void underline(Place place, List<String> lines) {
        String text = place.text().replace('\t', ' ').replaceAll("\\p{Cntrl}", "·");
        int room = width - 4;
        int at = Math.min(place.column() - 1, text.length());
        int from = text.length() <= room ? 0 : Math.max(0, Math.min(at - room / 3, text.length() - room));
        String piece = text.substring(from, Math.min(text.length(), from + room));
        int marks = Math.max(1, Math.min(place.endColumn() - place.column(), piece.length() - (at - from)));
        lines.add("    " + piece);
        lines.add("    " + " ".repeat(at - from) + paint(RED, "^".repeat(marks)));
    }

    private List<String> wrap(String label, String text) {
        String indent = "  ";
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(indent + label);
        for (String word : text.strip().split("\\s+")) {
            boolean full =
                    line.length() + word.length() > width && !line.toString().isBlank();
            if (full) {
                lines.add(line.toString().stripTrailing());
                line = new StringBuilder(indent + "  ");
            }
            line.append(word).append(' ');
        }
        lines.add(line.toString().stripTrailing());
        return lines;
    }

    private String paint(String style, String text) {
        return colour ? style + text + PLAIN : text;
    }
}
