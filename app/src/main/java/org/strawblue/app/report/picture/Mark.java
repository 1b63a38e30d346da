package org.strawblue.app.report.picture;

import java.util.List;

/** One mark of a drawing. */
public sealed interface Mark {

    record Point(double x, double y) {}

    /** A line through points; closed where it comes back to the first. */
    record Path(Pen pen, List<Point> points, boolean closed) implements Mark {
        public Path {
            points = List.copyOf(points);
        }
    }

    /** A filled field of a colour of its own, "#rrggbb". */
    record Field(String hex, double x, double y, double width, double height) implements Mark {}

    /** A filled area of a colour of its own, "#rrggbb", within these corners. */
    record Patch(String hex, List<Point> points) implements Mark {
        public Patch {
            points = List.copyOf(points);
        }
    }

    /** Lettering; {@code y} is its base line. */
    record Label(String text, double x, double y, Lettering lettering, Anchor anchor) implements Mark {

        /** Where it begins. */
        public double left() {
            double width = lettering.width(text);
            return switch (anchor) {
                case START -> x;
                case MIDDLE -> x - width / 2;
                case END -> x - width;
            };
        }

        public double right() {
            return left() + lettering.width(text);
        }

        /** Whether the two would lie on each other. */
        public boolean overlaps(Label other) {
            double row = 0.9 * Math.min(lettering.size, other.lettering.size);
            return Math.abs(y - other.y) < row && left() < other.right() && other.left() < right();
        }
    }

    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** Sizes of lettering on a drawing. */
    enum Lettering {
        PLAIN(12, false),
        STRONG(12, true),
        SMALL(11, false);

        private final double size;
        private final boolean strong;

        Lettering(double size, boolean strong) {
            this.size = size;
            this.strong = strong;
        }

        public double size() {
            return size;
        }

        public boolean strong() {
            return strong;
        }

        /** Width of a text, near enough to keep labels apart. */
        public double width(String text) {
            return text.length() * size * (strong ? 0.51 : 0.49);
        }
    }
}
