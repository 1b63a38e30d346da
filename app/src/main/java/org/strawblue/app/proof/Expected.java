package org.strawblue.app.proof;

/** What a case's source says should come out. */
public sealed interface Expected {

    /**
     * A number, in the case's unit.
     *
     * @param tolerance absolute, in the same unit
     */
    record Value(double value, double tolerance) implements Expected {}

    /** Two limits, in the case's unit. */
    record Range(double low, double high) implements Expected {}

    record Word(String text) implements Expected {}

    /** Reads {@code 61}, {@code 58..60} or a word; the tolerance is a number or a percentage. */
    static Expected parse(String expected, String tolerance) {
        int dots = expected.indexOf("..");
        if (dots > 0) {
            return new Range(
                    Double.parseDouble(expected.substring(0, dots).trim()),
                    Double.parseDouble(expected.substring(dots + 2).trim()));
        }
        try {
            double value = Double.parseDouble(expected.trim());
            return new Value(value, tolerance(value, tolerance.trim()));
        } catch (NumberFormatException e) {
            if (!tolerance.isBlank()) {
                throw new IllegalArgumentException("a word has no tolerance: '" + expected + "'", e);
            }
            return new Word(expected.trim());
        }
    }

    private static double tolerance(double value, String text) {
        if (text.endsWith("%")) {
            return Math.abs(value) * Double.parseDouble(text.substring(0, text.length() - 1)) / 100;
        }
        if (text.isEmpty()) {
            throw new IllegalArgumentException("a number needs a tolerance");
        }
        return Double.parseDouble(text);
    }
}
