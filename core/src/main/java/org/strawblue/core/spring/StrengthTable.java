package org.strawblue.core.spring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * A standard's own table, {@code tensile.csv}. Between two printed sizes the strength runs with the logarithm of the
 * diameter; where the standard gives steps ("up to and including"), the step rules.
 *
 * @param key of the standard and grade, such as {@code astm-a228}
 */
public record StrengthTable(String key, List<Size> sizes) implements StrengthLaw {

    private static final Map<String, StrengthTable> ALL = load();

    /** @param step whether the row holds for every thinner wire down to the row before */
    record Size(double wire, double least, boolean step, String source, Standing standing) {}

    public StrengthTable {
        sizes = List.copyOf(sizes);
    }

    /** @throws IllegalArgumentException where no table has this key */
    public static StrengthTable of(String key) {
        StrengthTable table = ALL.get(key);
        if (table == null) {
            throw new IllegalArgumentException("no strength table '" + key + "'; there are " + ALL.keySet());
        }
        return table;
    }

    public static List<String> keys() {
        return List.copyOf(ALL.keySet());
    }

    @Override
    public Optional<Strength> at(double wire) {
        // a calliper reading of the thickest or thinnest row may differ from it in the last digits
        double slack = wire * 1e-9;
        for (int i = 0; i < sizes.size(); i++) {
            if (wire <= sizes.get(i).wire() + slack) {
                return at(wire, i, slack);
            }
        }
        return Optional.empty();
    }

    private Optional<Strength> at(double wire, int i, double slack) {
        Size above = sizes.get(i);
        if (above.step() || Math.abs(above.wire() - wire) <= slack) {
            return Optional.of(strength(above.least(), above));
        }
        if (i == 0) {
            return Optional.empty();
        }
        Size below = sizes.get(i - 1);
        double share = Math.log(wire / below.wire()) / Math.log(above.wire() / below.wire());
        return Optional.of(strength(below.least() + share * (above.least() - below.least()), above));
    }

    private Strength strength(double least, Size size) {
        return new Strength(least, new Basis("tensile strength " + key, size.source(), size.standing()));
    }

    private static Map<String, StrengthTable> load() {
        Unit mm = Units.of(Dimension.LENGTH, "mm");
        Unit mpa = Units.of(Dimension.STRESS, "MPa");
        Map<String, List<Size>> sizes = new TreeMap<>();
        for (Row row : Table.of(StrengthTable.class, "tensile.csv").rows()) {
            sizes.computeIfAbsent(row.text("strength"), k -> new ArrayList<>())
                    .add(new Size(
                            mm.toSi(row.number("wire_mm")),
                            mpa.toSi(row.number("min_MPa")),
                            row.text("rule").equals("up-to"),
                            row.text("source"),
                            Standing.of(row.text("standing"))));
        }
        Map<String, StrengthTable> tables = new TreeMap<>();
        sizes.forEach((key, rows) -> tables.put(key, new StrengthTable(key, rows)));
        return tables;
    }
}
