package org.strawblue.app.input;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Unit;

/**
 * Reads quantities in any trade form: {@code 3/8 in}, {@code 1-1/8"}, {@code 530 F}, {@code 1 h 30 min},
 * {@code 58-60 HRC}, {@code about 60}, {@code 6 mm h6}, {@code 6 +0/-0.01 mm}, {@code don't know}. Never throws.
 */
public final class QuantityReader {

    private static final Lexicon NOT_KNOWN = Lexicon.of("not-known");
    private static final int LONGEST = 200;

    private QuantityReader() {}

    /** Whether the text says, in one of many ways, that the person does not know. */
    public static boolean notKnown(String text) {
        boolean number = !text.isEmpty() && Character.isDigit(text.charAt(0)); // most values are: no need to look
        return !number && text.length() < LONGEST && NOT_KNOWN.find(text).isPresent();
    }

    /** One value. */
    public static Reading<Quantity> quantity(String text, Expectation expected) {
        return reading(text, expected, scan -> {
            Amounts.Raw raw = new Amounts(expected).scan(scan);
            finish(scan, expected);
            return new Quantity(expected.dimension(), si(raw, expected));
        });
    }

    /** One value, a range of values, or a limit on one side. */
    public static Reading<Band> band(String text, Expectation expected) {
        return reading(text, expected, scan -> {
            Band band = new BandScan(expected, scan).band();
            finish(scan, expected);
            return band;
        });
    }

    /** A size with the limits it may lie between. */
    public static Reading<Size> size(String text, Expectation expected) {
        return reading(text, expected, scan -> {
            Size size = new SizeScan(expected, scan).size();
            finish(scan, expected);
            return size;
        });
    }

    /** A scan that ends in a value or a fault. */
    private interface Step<T> {
        T read(Scan scan) throws Misread;
    }

    private static <T> Reading<T> reading(String text, Expectation expected, Step<T> step) {
        if (notKnown(text)) {
            return new Reading.NotKnown<>();
        }
        try {
            if (text.isBlank() || text.length() > LONGEST) {
                throw new Misread(0, text.length(), expected.phrase(), "Write it, or write: don't know.");
            }
            return new Reading.Value<>(step.read(new Scan(text)), List.of());
        } catch (Misread e) {
            return e.fault(text);
        }
    }

    /** The value in the core's unit. */
    static double si(Amounts.Raw raw, Expectation expected) throws Misread {
        Optional<Unit> unit = raw.unit().or(expected::bare);
        if (unit.isEmpty()) {
            String units = UnitWords.of(expected.dimension()).list();
            throw new Misread(raw.from(), raw.to(), expected.phrase(), "Write the unit too: " + units + ".");
        }
        return check(unit.get().toSi(raw.value()), raw, expected, unit.get());
    }

    /** The value itself, where it is believable. */
    static double check(double si, Amounts.Raw raw, Expectation expected, Unit unit) throws Misread {
        if (!expected.range().contains(si)) {
            throw new Misread(raw.from(), raw.to(), between(expected, unit), "Check the number and its unit.");
        }
        return si;
    }

    private static String between(Expectation expected, Unit unit) {
        String symbol = unit.symbol().equals("1") ? "" : " " + unit.symbol();
        return expected.phrase()
                + ", from " + Numbers.show(unit.fromSi(expected.range().low()))
                + " to " + Numbers.show(unit.fromSi(expected.range().high())) + symbol;
    }

    /** Nothing may be left over. */
    private static void finish(Scan scan, Expectation expected) throws Misread {
        if (!scan.end()) {
            throw leftOver(scan, expected);
        }
    }

    static Misread leftOver(Scan scan, Expectation expected) {
        int from = scan.at;
        int to = scan.text.stripTrailing().length();
        String word = scan.text.substring(from, Math.min(scan.endOfWord(), to));
        UnitWords units = UnitWords.of(expected.dimension());
        return UnitWords.dimensionOf(word)
                .map(d -> new Misread(
                        from, to, expected.phrase(), word + " does not measure this: use " + units.list() + "."))
                .orElseGet(() -> new Misread(
                        from,
                        to,
                        expected.phrase(),
                        units.nearest(word),
                        "The units known here are " + units.list() + "."));
    }
}
