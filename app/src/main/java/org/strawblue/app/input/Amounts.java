package org.strawblue.app.input;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;

/** Scans one number with its unit, compound ones included: 6 mm, 1 h 30 min, 1:30 h, HRC 60, ø12. */
final class Amounts {

    private static final List<String> DIAMETER = Lexicon.of("diameter").longestFirst();
    private static final List<String> AND = List.of("and", "&", ",");
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,4}):([0-5]\\d)(?::([0-5]\\d))?(?![\\d.,:])");

    /**
     * A number as it stands, before its unit is settled.
     *
     * @param value in {@code unit}, or in a unit still to be settled
     */
    record Raw(double value, Optional<Unit> unit, int from, int to) {
        Raw orIn(Optional<Unit> other) {
            return unit.isPresent() ? this : new Raw(value, other, from, to);
        }
    }

    private final Expectation expected;
    private final UnitWords units;

    Amounts(Expectation expected) {
        this.expected = expected;
        this.units = UnitWords.of(expected.dimension());
    }

    Raw scan(Scan scan) throws Misread {
        scan.space();
        int from = scan.at;
        if (expected.dimension() == Dimension.LENGTH) {
            scan.take(DIAMETER);
        }
        if (expected.dimension() == Dimension.TIME) {
            Optional<Raw> clock = clock(scan);
            if (clock.isPresent()) {
                return clock.get();
            }
        }
        Optional<Unit> before = unitBefore(scan);
        double value = Numbers.signed(scan);
        Optional<Unit> unit = before.isPresent() ? before : units.take(scan);
        Raw first = new Raw(value, unit, from, scan.at);
        return unit.isPresent() && unit.get().offset() == 0 ? compound(scan, first) : first;
    }

    /** "HRC 60" */
    private Optional<Unit> unitBefore(Scan scan) {
        boolean hardness =
                expected.dimension() == Dimension.HARDNESS || expected.dimension() == Dimension.HARDNESS_VICKERS;
        return hardness ? units.take(scan) : Optional.empty();
    }

    /** 1:30 h is hours and minutes, 1:30 min is minutes and seconds; 1:30 alone could be either. */
    private Optional<Raw> clock(Scan scan) throws Misread {
        Optional<Matcher> found = scan.match(CLOCK);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Matcher m = found.get();
        int from = scan.at;
        scan.at = m.end();
        Optional<Unit> written = units.take(scan);
        boolean three = m.group(3) != null;
        if (written.isEmpty() && !three) {
            throw new Misread(from, m.end(), expected.phrase(), "Say whether hours or minutes: " + m.group() + " h.");
        }
        double lead = three ? 3600 : written.get().factor();
        double seconds = lead * Double.parseDouble(m.group(1)) + lead / 60 * Double.parseDouble(m.group(2));
        seconds += three ? Double.parseDouble(m.group(3)) : 0;
        return Optional.of(new Raw(seconds, units.find("s"), from, scan.at));
    }

    /** Smaller units that follow: 1 h 30 min, 1 h 30, 2 lb 3 oz. */
    private Raw compound(Scan scan, Raw first) throws Misread {
        Raw sum = first;
        Unit last = first.unit().orElseThrow();
        double base = last.factor();
        while (true) {
            int back = scan.at;
            Optional<Raw> next = smaller(scan, last);
            if (next.isEmpty()) {
                scan.at = back;
                return sum;
            }
            last = next.get().unit().orElseThrow();
            sum = new Raw(sum.value() + next.get().value() * last.factor() / base, first.unit(), first.from(), scan.at);
        }
    }

    private Optional<Raw> smaller(Scan scan, Unit than) throws Misread {
        scan.space();
        scan.take(AND);
        scan.space();
        int from = scan.at;
        if (!scan.startsDigit()) {
            return Optional.empty();
        }
        double value = Numbers.unsigned(scan);
        Optional<Unit> unit = units.take(scan);
        if (unit.isEmpty() && expected.dimension() == Dimension.TIME && scan.end()) {
            unit = than.symbol().equals("h") ? units.find("min") : units.find("s");
        }
        return unit.filter(u -> u.factor() < than.factor()).map(u -> new Raw(value, Optional.of(u), from, scan.at));
    }
}
