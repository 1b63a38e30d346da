package org.strawblue.app.input;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.Normalizer;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as people write them: 6, .375, 12,7, 3/8, 1 1/8, 1-1/8, ½. */
final class Numbers {

    private static final Pattern MIXED =
            Pattern.compile("(\\d{1,9})(\\s+|\\s*-\\s*)(\\d{1,9})\\s*/\\s*(\\d{1,9})(?![\\d.,])");
    private static final Pattern FRACTION = Pattern.compile("(\\d{1,9})\\s*/\\s*(\\d{1,9})(?![\\d.,])");
    private static final Pattern VULGAR = Pattern.compile("(?:(\\d{1,9})\\s*-?\\s*)?([¼-¾⅐-⅞])");
    private static final Pattern DECIMAL =
            Pattern.compile("(\\d+(?:[.,]\\d+)*[.,]?|[.,]\\d+)([eE][+-]?\\d{1,4}(?![\\w.]))?");
    private static final Pattern THOUSANDS_COMMA = Pattern.compile("\\d{1,3}(?:,\\d{3})+(?:\\.\\d*)?");
    private static final Pattern THOUSANDS_POINT = Pattern.compile("\\d{1,3}(?:\\.\\d{3})+,\\d+");
    private static final Pattern DOUBTFUL = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
    private static final String EXPECTED = "a number such as 6, 0.25, 3/8 or 1 1/8";

    private Numbers() {}

    static boolean starts(String text, int at) {
        char c = text.charAt(at);
        boolean point = (c == '.' || c == ',') && at + 1 < text.length() && isDigit(text.charAt(at + 1));
        return isDigit(c) || point || (c >= '¼' && c <= '¾') || (c >= '⅐' && c <= '⅞');
    }

    /** A number, with its sign if it has one. */
    static double signed(Scan scan) throws Misread {
        scan.space();
        int start = scan.at;
        boolean sign = scan.at < scan.text.length() && "+-".indexOf(scan.text.charAt(scan.at)) >= 0;
        boolean minus = sign && scan.text.charAt(scan.at) == '-';
        if (sign) {
            scan.at++;
            scan.space();
        }
        if (!scan.startsDigit()) {
            scan.at = start;
        }
        double value = unsigned(scan);
        return minus ? -value : value;
    }

    static double unsigned(Scan scan) throws Misread {
        scan.space();
        if (!scan.startsDigit()) {
            throw new Misread(scan.at, scan.endOfWord(), EXPECTED, "Begin with the number, then its unit.");
        }
        Optional<Double> whole = mixed(scan);
        double value = whole.isPresent() ? whole.get() : decimal(scan);
        if (scan.at < scan.text.length() && isDigit(scan.text.charAt(scan.at))) {
            throw new Misread(scan.at, scan.endOfWord(), EXPECTED, "Write it as one plain number.");
        }
        return value;
    }

    private static Optional<Double> mixed(Scan scan) throws Misread {
        Optional<Matcher> vulgar = scan.match(VULGAR);
        if (vulgar.isPresent()) {
            return Optional.of(vulgar(scan, vulgar.get()));
        }
        Optional<Matcher> mixed = scan.match(MIXED);
        if (mixed.isPresent() && properFraction(mixed.get())) {
            Matcher m = mixed.get();
            double value = Double.parseDouble(m.group(1)) + ratio(scan, m, 3);
            scan.at = m.end();
            return Optional.of(value);
        }
        Optional<Matcher> fraction = scan.match(FRACTION);
        if (fraction.isEmpty()) {
            return Optional.empty();
        }
        double value = ratio(scan, fraction.get(), 1);
        scan.at = fraction.get().end();
        return Optional.of(value);
    }

    /** "1-1/8" is one and an eighth; "10-21/2" is a range. */
    private static boolean properFraction(Matcher m) {
        return Long.parseLong(m.group(3)) < Long.parseLong(m.group(4));
    }

    private static double ratio(Scan scan, Matcher m, int group) throws Misread {
        double below = Double.parseDouble(m.group(group + 1));
        if (below == 0) {
            throw new Misread(scan.at, m.end(), "a fraction such as 3/8", "Nothing can be divided by 0.");
        }
        return Double.parseDouble(m.group(group)) / below;
    }

    private static double vulgar(Scan scan, Matcher m) {
        String[] parts = Normalizer.normalize(m.group(2), Normalizer.Form.NFKD).split("⁄");
        double fraction = parts.length == 2 ? Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]) : 0;
        scan.at = m.end();
        return (m.group(1) == null ? 0 : Double.parseDouble(m.group(1))) + fraction;
    }

    private static double decimal(Scan scan) throws Misread {
        Matcher m = scan.match(DECIMAL)
                .orElseThrow(() -> new Misread(scan.at, scan.endOfWord(), EXPECTED, "Write a plain number."));
        String plain = point(m.group(1), scan.at, m.end(1)) + (m.group(2) == null ? "" : m.group(2));
        double value = Double.parseDouble(plain);
        if (!Double.isFinite(value)) {
            throw new Misread(scan.at, m.end(), EXPECTED, "That number is too large to be meant.");
        }
        scan.at = m.end();
        return value;
    }

    /** The digits with a decimal point and no thousands marks. */
    private static String point(String digits, int from, int to) throws Misread {
        if (digits.indexOf(',') < 0 && digits.indexOf('.') == digits.lastIndexOf('.')) {
            return digits;
        }
        if (DOUBTFUL.matcher(digits).matches()) {
            throw new Misread(from, to, "a number without a thousands mark", doubt(digits));
        }
        if (THOUSANDS_COMMA.matcher(digits).matches() && !digits.startsWith("0")) {
            return digits.replace(",", "");
        }
        if (THOUSANDS_POINT.matcher(digits).matches()) {
            return digits.replace(".", "").replace(',', '.');
        }
        if (digits.matches("\\d*,\\d+")) {
            return digits.replace(',', '.');
        }
        throw new Misread(from, to, EXPECTED, "Use one decimal point and no thousands marks.");
    }

    private static String doubt(String digits) {
        return "It could mean " + digits.replace(",", "") + " or " + digits.replace(',', '.')
                + ": write the one you mean.";
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** For a sentence: six figures at most, no needless zeros, a point for the decimals. */
    static String show(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros();
        boolean plain = Math.abs(value) < 1e7 && rounded.scale() < 8;
        return plain ? rounded.toPlainString() : rounded.toString();
    }
}
