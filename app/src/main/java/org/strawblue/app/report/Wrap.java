package org.strawblue.app.report;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines at plain spaces, which then are the only spaces left. Nothing is longer than the line unless it has no gap. */
final class Wrap {

    private Wrap() {}

    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.trim().split(" +")) {
            for (String piece : pieces(word, width)) {
                if (line.length() > 0 && length(line) + 1 + length(piece) > width) {
                    lines.add(Text.loose(line.toString()));
                    line.setLength(0);
                }
                line.append(line.length() > 0 ? " " : "").append(piece);
            }
        }
        lines.add(Text.loose(line.toString()));
        return lines;
    }

    static int length(CharSequence text) {
        return Character.codePointCount(text, 0, text.length());
    }

    private static List<String> pieces(String word, int width) {
        List<String> pieces = new ArrayList<>();
        String rest = word;
        while (length(rest) > width) {
            int cut = rest.offsetByCodePoints(0, width);
            pieces.add(rest.substring(0, cut));
            rest = rest.substring(cut);
        }
        pieces.add(rest);
        return pieces;
    }
}
