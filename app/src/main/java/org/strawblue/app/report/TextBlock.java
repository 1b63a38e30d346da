package org.strawblue.app.report;

import java.util.List;
import java.util.function.UnaryOperator;

/** Lines of text growing downward, wrapped to the screen. */
final class TextBlock {

    private static final int GUTTER = 2;

    private final StringBuilder out = new StringBuilder();
    private final Screen screen;

    TextBlock(Screen screen) {
        this.screen = screen;
    }

    TextBlock strong(int indent, String text) {
        return wrapped(indent, text, screen::strong);
    }

    TextBlock faint(int indent, String text) {
        return wrapped(indent, text, screen::faint);
    }

    /** As {@link #hanging}, in faint letters. */
    TextBlock faint(int indent, String sign, String text) {
        return hanging(indent, sign, text, screen::faint);
    }

    /** A sign, and the text beside it, also on the lines that follow. */
    TextBlock hanging(int indent, String sign, String text) {
        return hanging(indent, sign, text, l -> l);
    }

    /** Two columns: a label of at most {@code labelWidth}, and its value. */
    TextBlock columns(int indent, String label, int labelWidth, String value) {
        List<String> left = Wrap.lines(label, labelWidth);
        int valueIndent = indent + labelWidth + GUTTER;
        List<String> right = Wrap.lines(value, width(valueIndent));
        for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
            String first = i < left.size() ? left.get(i) : "";
            String second = i < right.size() ? right.get(i) : "";
            line(indent, first + " ".repeat(labelWidth - Wrap.length(first) + GUTTER) + second);
        }
        return this;
    }

    /** A line taken as it is. */
    TextBlock line(int indent, String text) {
        out.append((" ".repeat(indent) + text).stripTrailing()).append('\n');
        return this;
    }

    TextBlock rule(char stroke) {
        return line(0, screen.faint(String.valueOf(stroke).repeat(screen.columns())));
    }

    TextBlock gap() {
        out.append('\n');
        return this;
    }

    int width(int indent) {
        return Math.max(10, screen.columns() - indent);
    }

    private TextBlock hanging(int indent, String sign, String text, UnaryOperator<String> style) {
        String lead = sign;
        for (String line : Wrap.lines(text, width(indent + sign.length()))) {
            line(indent, style.apply(lead + line));
            lead = " ".repeat(sign.length());
        }
        return this;
    }

    private TextBlock wrapped(int indent, String text, UnaryOperator<String> style) {
        Wrap.lines(text, width(indent)).forEach(l -> line(indent, style.apply(l)));
        return this;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
