package org.strawblue.core.fit;

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
 * What a size is measured with, from {@code instruments.csv}.
 *
 * @param half half the 80 % interval of one careful reading [m]
 * @param twoPoint whether it touches two points only, and so does not see an odd-lobed shape
 */
public record Instrument(String name, double half, boolean twoPoint, Basis basis) {

    private static final Unit MICRON = Units.of(Dimension.LENGTH, "µm");
    private static final Vocabulary<Instrument> WORDS = words();

    public static Optional<Instrument> find(String word) {
        return WORDS.meanings(word).stream().findFirst();
    }

    /** The names they go by. */
    public static List<String> names() {
        return Table.of(Instrument.class, "instruments.csv").rows().stream()
                .map(r -> r.text("instrument"))
                .toList();
    }

    /** A reading [m] with what it may be wrong by. */
    public Estimate read(double metres) {
        return Estimate.of(Dimension.LENGTH, metres, metres - half, metres + half, basis);
    }

    private static Vocabulary<Instrument> words() {
        Vocabulary<Instrument> words = new Vocabulary<>();
        for (Row row : Table.of(Instrument.class, "instruments.csv").rows()) {
            Instrument instrument = of(row);
            words.add(instrument.name, instrument);
            for (String also : row.text("also").split("\\|")) {
                words.add(also, instrument);
            }
        }
        return words;
    }

    private static Instrument of(Row row) {
        String name = row.text("instrument");
        return new Instrument(
                name,
                MICRON.toSi(row.number("half_um")),
                row.text("two_point").equals("yes"),
                new Basis("error of a " + name, row.text("source"), Standing.of(row.text("standing"))));
    }
}
