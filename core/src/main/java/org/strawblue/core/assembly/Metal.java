package org.strawblue.core.assembly;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;
import org.strawblue.core.table.Vocabulary;

/**
 * The surface an anaerobic sets on, from {@code surfaces.csv}; of two, the slower one counts.
 *
 * @param fixture time until the joint can be handled, at the temperature cure times are told for [s]
 */
public record Metal(String name, Estimate fixture, Primer primer) {

    /** Whether it sets without help. */
    public enum Primer {
        NO,
        ADVISED,
        NEEDED
    }

    private static final Unit MINUTE = Units.of(Dimension.TIME, "min");
    private static final Vocabulary<Metal> WORDS = new Vocabulary<>();
    private static final List<Metal> ALL =
            Table.of(Metal.class, "surfaces.csv").rows().stream().map(Metal::of).toList();

    public static Optional<Metal> find(String word) {
        return WORDS.meanings(word).stream().findFirst();
    }

    public static List<String> names() {
        return ALL.stream().map(Metal::name).toList();
    }

    private static Metal of(Row row) {
        String name = row.text("surface");
        double low = MINUTE.toSi(row.number("fixture_low_min"));
        double high = MINUTE.toSi(row.number("fixture_high_min"));
        Basis basis = new Basis("setting on " + name, row.text("source"), Standing.of(row.text("standing")));
        Metal metal = new Metal(
                name, Estimate.of(Dimension.TIME, Math.sqrt(low * high), low, high, basis), primer(row.text("primer")));
        WORDS.add(name, metal);
        for (String also : row.text("also").split("\\|")) {
            WORDS.add(also, metal);
        }
        return metal;
    }

    private static Primer primer(String word) {
        return word.equals("no") ? Primer.NO : word.equals("advised") ? Primer.ADVISED : Primer.NEEDED;
    }
}
