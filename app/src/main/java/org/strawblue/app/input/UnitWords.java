package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Vocabulary;

/** The ways people write the units of one dimension. */
final class UnitWords {

    private static final Map<Dimension, UnitWords> ALL = new EnumMap<>(Dimension.class);

    static {
        for (Dimension dimension : Dimension.values()) {
            ALL.put(dimension, new UnitWords(dimension));
        }
    }

    private record Name(String text, Unit unit) {}

    private final List<Name> names = new ArrayList<>();

    private UnitWords(Dimension dimension) {
        for (Unit unit : Units.all()) {
            if (unit.dimension() == dimension) {
                unit.names().forEach(n -> names.add(new Name(new Scan(n).text, unit)));
            }
        }
        names.sort((a, b) -> b.text.length() - a.text.length());
    }

    static UnitWords of(Dimension dimension) {
        return Objects.requireNonNull(ALL.get(dimension), dimension::name);
    }

    /** Moves past a unit that stands here: as written if possible, in other letters (MM, Thou) if not. */
    Optional<Unit> take(Scan scan) {
        scan.space();
        Optional<Unit> found = take(scan, false).or(() -> take(scan, true));
        found.ifPresent(u -> skipPoint(scan));
        return found;
    }

    private Optional<Unit> take(Scan scan, boolean anyCase) {
        for (Name name : names) {
            int end = scan.at + name.text.length();
            boolean number = Character.isDigit(name.text.charAt(0)); // the unit "1" is never written
            if (!number
                    && scan.text.regionMatches(anyCase, scan.at, name.text, 0, name.text.length())
                    && !scan.runsOn(end)) {
                scan.at = end;
                return Optional.of(name.unit);
            }
        }
        return Optional.empty();
    }

    /** "in." and "min." end in a point that is no decimal. */
    private static void skipPoint(Scan scan) {
        boolean point = scan.at < scan.text.length()
                && scan.text.charAt(scan.at) == '.'
                && Character.isLetter(scan.text.charAt(scan.at - 1));
        boolean last = scan.at + 1 >= scan.text.length()
                || Character.isWhitespace(scan.text.charAt(Math.min(scan.at + 1, scan.text.length() - 1)));
        if (point && last) {
            scan.at++;
        }
    }

    /** The unit written as {@code word}, whole. */
    Optional<Unit> find(String word) {
        Scan scan = new Scan(word.strip());
        return take(scan).filter(u -> scan.end());
    }

    /** The symbols, for an error: "mm, cm, m, in". */
    String list() {
        return String.join(", ", symbols().filter(s -> !s.equals("1")).toList());
    }

    String nearest(String word) {
        Vocabulary<Unit> vocabulary = new Vocabulary<>(); // made when needed: most files have no such error
        names.forEach(n -> vocabulary.add(n.text, n.unit));
        return Lexicon.nearest(vocabulary, word).orElse("");
    }

    private Stream<String> symbols() {
        return Units.all().stream()
                .filter(u -> names.stream().anyMatch(n -> n.unit == u))
                .map(Unit::symbol);
    }

    /** What kind of thing is measured in {@code word}, if it is a unit of anything. */
    static Optional<Dimension> dimensionOf(String word) {
        return ALL.entrySet().stream()
                .filter(e -> e.getValue().find(word).isPresent())
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
