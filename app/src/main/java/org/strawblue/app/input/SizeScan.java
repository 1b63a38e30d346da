package org.strawblue.app.input;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Unit;

/** Scans a size with its limits: 6 mm h6, 6 +0/-0.01 mm, 0.25 ±0.0005 in, 5.99 to 6.00 mm. */
final class SizeScan {

    private static final Pattern FIT = Pattern.compile("([A-Za-z]{1,2})\\s?(\\d{1,2})(?![\\w.,/])");
    private static final Pattern PAIR = Pattern.compile("(?=[+-]\\s*[\\d.,])");
    private static final String LIMITS = "both limits, such as +0/-0.01 mm";

    private final Expectation expected;
    private final Scan scan;
    private final Amounts amounts;

    SizeScan(Expectation expected, Scan scan) {
        this.expected = expected;
        this.scan = scan;
        this.amounts = new Amounts(expected);
    }

    Size size() throws Misread {
        Amounts.Raw first = amounts.scan(scan);
        scan.space();
        Optional<String> fit = fit();
        if (fit.isPresent()) {
            Optional<Unit> after = first.unit().isPresent()
                    ? Optional.empty()
                    : UnitWords.of(expected.dimension()).take(scan);
            return new Size(QuantityReader.si(first.orIn(after), expected), Optional.empty(), fit);
        }
        if (pairFollows()) {
            return pair(first);
        }
        scan.at = 0;
        Band band = new BandScan(expected, scan).band();
        boolean exact = band.low() == band.high();
        return new Size(band.middle(), exact ? Optional.empty() : Optional.of(band), Optional.empty());
    }

    private Optional<String> fit() {
        Optional<Matcher> m = scan.match(FIT);
        m.ifPresent(found -> scan.at = found.end());
        return m.map(found -> found.group(1) + found.group(2));
    }

    /** A signed number that is followed by a second one: "+0/-0.01", "-0.01 -0.02"; "6 - 7" is a range. */
    private boolean pairFollows() {
        int back = scan.at;
        try {
            if (scan.match(PAIR).isEmpty()) {
                return false;
            }
            boolean plus = scan.text.charAt(scan.at) == '+';
            amounts.scan(scan);
            return plus || second();
        } catch (Misread e) {
            return false; // whatever it is, it is not limits
        } finally {
            scan.at = back;
        }
    }

    private boolean second() {
        scan.space();
        slash();
        return scan.match(PAIR).isPresent() || scan.startsZero();
    }

    private void slash() {
        if (scan.at < scan.text.length() && "/,".indexOf(scan.text.charAt(scan.at)) >= 0) {
            scan.at++;
            scan.space();
        }
    }

    private Size pair(Amounts.Raw nominal) throws Misread {
        Amounts.Raw a = amounts.scan(scan);
        scan.space();
        slash();
        if (scan.end()) {
            throw new Misread(a.from(), a.to(), LIMITS, "Give the other limit too, +0 or -0 if it is none.");
        }
        Amounts.Raw b = amounts.scan(scan);
        Optional<Unit> unit = nominal.unit().or(b::unit).or(a::unit).or(expected::bare);
        double middle = QuantityReader.si(nominal.orIn(unit), expected);
        double one = middle
                + a.value()
                        * a.orIn(b.unit().or(() -> unit)).unit().orElseThrow().factor();
        double two = middle + b.value() * b.orIn(unit).unit().orElseThrow().factor();
        if (!(expected.range().contains(one) && expected.range().contains(two))) {
            throw new Misread(a.from(), b.to(), LIMITS, "With these limits the size leaves what is possible.");
        }
        return new Size(middle, Optional.of(Band.between(expected.dimension(), one, two)), Optional.empty());
    }
}
