package org.strawblue.app.input;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Unit;

/** Scans a value, a range, "about", "at least", "at most", or a value with plus and minus. */
final class BandScan {

    private static final Lexicon BOUND = Lexicon.of("bound");
    private static final Lexicon BOUND_AFTER = Lexicon.of("bound-after");
    private static final Lexicon RANGE = Lexicon.of("range");
    private static final Lexicon PLUS_MINUS = Lexicon.of("plus-minus");
    private static final List<String> BETWEEN_AND = List.of("and");

    private final Expectation expected;
    private final Scan scan;
    private final Amounts amounts;

    BandScan(Expectation expected, Scan scan) {
        this.expected = expected;
        this.scan = scan;
        this.amounts = new Amounts(expected);
    }

    Band band() throws Misread {
        scan.space();
        String bound = word(BOUND).orElse("");
        Amounts.Raw first = amounts.scan(scan);
        scan.space();
        if (word(PLUS_MINUS).isPresent()) {
            return plusMinus(first);
        }
        if (word(RANGE).isPresent()
                || bound.equals("between") && scan.take(BETWEEN_AND).isPresent()) {
            return range(first);
        }
        if (bound.isEmpty()) {
            bound = word(BOUND_AFTER).orElse("");
        }
        return bounded(bound, QuantityReader.si(first, expected));
    }

    private Optional<String> word(Lexicon lexicon) {
        return scan.take(lexicon.longestFirst()).flatMap(lexicon::find);
    }

    private Band range(Amounts.Raw first) throws Misread {
        Amounts.Raw second = amounts.scan(scan);
        double a = QuantityReader.si(first.orIn(second.unit()), expected);
        double b = QuantityReader.si(second.orIn(first.unit()), expected);
        return Band.between(expected.dimension(), a, b);
    }

    private Band plusMinus(Amounts.Raw first) throws Misread {
        Amounts.Raw width = amounts.scan(scan);
        Optional<Unit> unit = first.unit().or(width::unit).or(expected::bare);
        double middle = QuantityReader.si(first.orIn(unit), expected);
        // a difference has no offset: 5 °C more is 5 K more
        double reach = Math.abs(width.value())
                * width.unit().or(() -> unit).map(Unit::factor).orElse(1.0);
        double low = QuantityReader.check(middle - reach, first, expected, unit.orElseThrow());
        return new Band(expected.dimension(), low, middle + reach);
    }

    private Band bounded(String bound, double si) {
        return switch (bound) {
            case "about" -> new Band(expected.dimension(), si - expected.aboutOf(si), si + expected.aboutOf(si));
            case "at least" ->
                new Band(expected.dimension(), si, expected.range().high());
            case "at most" -> new Band(expected.dimension(), expected.range().low(), si);
            default -> new Band(expected.dimension(), si, si);
        };
    }
}
