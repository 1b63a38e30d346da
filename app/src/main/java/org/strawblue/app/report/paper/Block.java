package org.strawblue.app.report.paper;

import java.util.List;

/** A piece of the card that is not broken over pages. Lengths in points. */
interface Block {

    double height(Typefaces faces, double width);

    void draw(Pencil pencil, Typefaces faces, double x, double y, double width);

    /** Whether the next block must stand on the same page. */
    default boolean keepWithNext() {
        return false;
    }

    /** Empty room; none at the head of a page. */
    record Gap(double points) implements Block {
        @Override
        public double height(Typefaces faces, double width) {
            return points;
        }

        @Override
        public void draw(Pencil pencil, Typefaces faces, double x, double y, double width) {}
    }

    /** A line across. */
    record Rule(double thickness, double ink) implements Block {
        @Override
        public double height(Typefaces faces, double width) {
            return thickness;
        }

        @Override
        public void draw(Pencil pencil, Typefaces faces, double x, double y, double width) {
            pencil.rule(x, y, x + width, y, thickness, ink);
        }

        @Override
        public boolean keepWithNext() {
            return true;
        }
    }

    /** Text, with a sign hanging before it where there is one. */
    record Paragraph(Style style, String sign, String text, boolean keepWithNext) implements Block {

        Paragraph(Style style, String text) {
            this(style, "", text, false);
        }

        private double indent(Typefaces faces) {
            return sign.isEmpty() ? 0 : faces.of(style.strong()).width(sign, style.size()) + style.size() * 0.4;
        }

        private List<String> lines(Typefaces faces, double width) {
            return faces.of(style.strong()).lines(text, style.size(), width - indent(faces));
        }

        @Override
        public double height(Typefaces faces, double width) {
            return lines(faces, width).size() * style.leading();
        }

        @Override
        public void draw(Pencil pencil, Typefaces faces, double x, double y, double width) {
            double base = y + style.size();
            if (!sign.isEmpty()) {
                pencil.text(sign, x, base, style.strong(), style.size(), style.ink());
            }
            for (String line : lines(faces, width)) {
                pencil.text(line, x + indent(faces), base, style.strong(), style.size(), style.ink());
                base += style.leading();
            }
        }
    }

    /** A figure: its label, and its value in a column of its own, a hairline below. */
    record FigureRow(String label, String value) implements Block {
        private static final double LABEL_SHARE = 0.46;
        private static final double PADDING = 0.8;

        @Override
        public double height(Typefaces faces, double width) {
            return Math.max(left().height(faces, leftWidth(width)), right().height(faces, width - valueAt(width)))
                    + 2 * PADDING;
        }

        @Override
        public void draw(Pencil pencil, Typefaces faces, double x, double y, double width) {
            draw(pencil, faces, x, y, width, height(faces, width));
        }

        /** With its hairline at a given height, so that neighbours share theirs. */
        void draw(Pencil pencil, Typefaces faces, double x, double y, double width, double height) {
            left().draw(pencil, faces, x, y + PADDING - 1, leftWidth(width));
            right().draw(pencil, faces, x + valueAt(width), y + PADDING - 1, width - valueAt(width));
            pencil.rule(x, y + height, x + width, y + height, 0.4, 0.3);
        }

        private Paragraph left() {
            return new Paragraph(Style.LABEL, label);
        }

        private Paragraph right() {
            return new Paragraph(Style.STRONG, value);
        }

        private static double valueAt(double width) {
            return width * LABEL_SHARE;
        }

        private static double leftWidth(double width) {
            return valueAt(width) - 8;
        }
    }

    /** Two figures side by side, or the last one alone. */
    record FigurePair(List<FigureRow> rows) implements Block {
        private static final double GUTTER = 14;

        @Override
        public double height(Typefaces faces, double width) {
            return rows.stream()
                    .mapToDouble(r -> r.height(faces, column(width)))
                    .max()
                    .orElse(0);
        }

        @Override
        public void draw(Pencil pencil, Typefaces faces, double x, double y, double width) {
            double height = height(faces, width);
            double at = x;
            for (FigureRow row : rows) {
                row.draw(pencil, faces, at, y, column(width), height);
                at += column(width) + GUTTER;
            }
        }

        private static double column(double width) {
            return (width - GUTTER) / 2;
        }
    }

    /** A warning behind a heavy bar. */
    record Warning(String text) implements Block {
        private static final double BAR = 4;
        private static final double INDENT = 12;
        private static final double BELOW = 3;

        @Override
        public double height(Typefaces faces, double width) {
            return body().height(faces, width - INDENT) + BELOW;
        }

        @Override
        public void draw(Pencil pencil, Typefaces faces, double x, double y, double width) {
            double height = height(faces, width) - BELOW;
            pencil.rule(x + BAR / 2, y, x + BAR / 2, y + height, BAR, 1);
            body().draw(pencil, faces, x + INDENT, y, width - INDENT);
        }

        private Paragraph body() {
            return new Paragraph(Style.STRONG, "Danger. " + text);
        }

        @Override
        public boolean keepWithNext() {
            return true;
        }
    }
}
