package org.strawblue.app.report.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.strawblue.app.report.Resource;

/** One weight of the card's lettering, measured from the font itself and embedded in the document. */
final class Typeface {

    private static final int UNKNOWN = '?';

    private final PDFont font;
    private final CmapLookup glyphs;
    private final TrueTypeFont source;
    private final double unitsPerEm;
    private final Map<Integer, Double> advances = new HashMap<>();

    private Typeface(PDFont font, TrueTypeFont source) throws IOException {
        this.font = font;
        this.source = source;
        this.glyphs = source.getUnicodeCmapLookup();
        this.unitsPerEm = source.getUnitsPerEm();
    }

    static Typeface load(PDDocument document, String name) throws IOException {
        TrueTypeFont source = new TTFParser().parse(new RandomAccessReadBuffer(Resource.bytes(name)));
        return new Typeface(PDType0Font.load(document, source, true), source);
    }

    PDFont font() {
        return font;
    }

    /** Width of a text set at {@code size} [pt]. */
    double width(String text, double size) {
        double units = 0;
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            units += advance(text.codePointAt(i));
        }
        return units / unitsPerEm * size;
    }

    /** The text with what the font lacks replaced, so that it can always be set. */
    String settable(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> out.appendCodePoint(glyphs.getGlyphId(c) == 0 ? UNKNOWN : c));
        return out.toString();
    }

    /** Breaks a text into lines no wider than {@code width} [pt]. */
    List<String> lines(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        double gap = width(" ", size);
        StringBuilder line = new StringBuilder();
        double reached = 0;
        for (String word : settable(text).trim().split(" +")) {
            double wide = width(word, size);
            if (line.length() > 0 && reached + gap + wide > width) {
                lines.add(line.toString());
                line.setLength(0);
                reached = 0;
            }
            String rest = wide > width ? fit(word, size, width, lines) : word;
            reached += (line.length() > 0 ? gap : 0) + (rest.equals(word) ? wide : width(rest, size));
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    /** Cuts a word longer than the line; what is left over starts the next. */
    private String fit(String word, double size, double width, List<String> lines) {
        String rest = word;
        while (width(rest, size) > width && rest.codePointCount(0, rest.length()) > 1) {
            int end = rest.length();
            while (end > rest.offsetByCodePoints(0, 1) && width(rest.substring(0, end), size) > width) {
                end = rest.offsetByCodePoints(end, -1);
            }
            lines.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        return rest;
    }

    private double advance(int codePoint) {
        return advances.computeIfAbsent(codePoint, this::measured);
    }

    private double measured(int codePoint) {
        try {
            return source.getAdvanceWidth(glyphs.getGlyphId(codePoint));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
