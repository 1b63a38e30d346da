package org.strawblue.app.report;

import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Phrase;

/** A text of the card in both unit systems, so that a page can switch between them. Free of control characters. */
public record Text(String metric, String inch) {

    private static final char GLUE = '\u00a0';

    private static final AmountWriter METRIC = new AmountWriter(UnitSystem.METRIC);
    private static final AmountWriter INCH = new AmountWriter(UnitSystem.INCH);

    public Text {
        metric = clean(metric);
        inch = clean(inch);
    }

    public static Text of(Phrase phrase) {
        return new Text(phrase.write(a -> glued(METRIC.apply(a))), phrase.write(a -> glued(INCH.apply(a))));
    }

    public static Text of(Estimate estimate) {
        return new Text(glued(METRIC.write(estimate)), glued(INCH.write(estimate)));
    }

    /** A text without numbers. */
    public static Text of(String same) {
        return new Text(same, same);
    }

    public String in(UnitSystem system) {
        return system == UnitSystem.METRIC ? metric : inch;
    }

    /** Whether both systems write it alike. */
    public boolean same() {
        return metric.equals(inch);
    }

    public boolean isBlank() {
        return metric.isBlank();
    }

    /** The same text with plain spaces only. */
    public static String loose(String text) {
        return text.replace(GLUE, ' ');
    }

    /** As it stands in HTML: a band is not parted behind its dash either. */
    public static String joined(String text) {
        return text.replaceAll("(?<=\\d)–(?=\\d)", "\u2060–\u2060");
    }

    /** A number stays on one line with its unit: a space that does not break stands between them. */
    private static String glued(String amount) {
        StringBuilder out = new StringBuilder(amount);
        for (int i = amount.indexOf(' '); i >= 0; i = amount.indexOf(' ', i + 1)) {
            char before = i > 0 ? amount.charAt(i - 1) : GLUE;
            char after = i + 1 < amount.length() ? amount.charAt(i + 1) : GLUE;
            if (before != '·' && after != '(' && after != '·') {
                out.setCharAt(i, GLUE);
            }
        }
        return out.toString();
    }

    /** Text from a job file may hold anything; what would upset a terminal or an XML reader becomes a space. */
    static String clean(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            int c = text.codePointAt(i);
            out.appendCodePoint(printable(c) ? c : ' ');
        }
        return out.toString();
    }

    private static boolean printable(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
