package org.strawblue.app.report;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * How numbers of one dimension and size are printed; a line of {@code number-styles.csv}.
 *
 * @param from least size for which this holds, in the core's unit
 * @param unit in which they are printed
 * @param symbol printed behind the number, empty for pure numbers
 * @param figures significant figures of a number that comes without an interval
 * @param finest no number is rounded finer than to this [unit]
 * @param coarsest nor coarser than to this [unit]
 * @param also symbol of a second unit printed in brackets
 */
record NumberStyle(
        double from, Unit unit, String symbol, int figures, double finest, double coarsest, Optional<String> also) {

    private static final Map<UnitSystem, Map<Dimension, List<NumberStyle>>> ALL = load();

    /** The style for a number of this dimension whose size is {@code si}. */
    static NumberStyle of(UnitSystem system, Dimension dimension, double si) {
        List<NumberStyle> styles = styles(system, dimension);
        double size = si == 0 ? 1 : Math.abs(si); // nothing is nothing of the usual unit
        return styles.stream().filter(s -> s.from <= size).reduce((a, b) -> b).orElse(styles.get(0));
    }

    /** The style of the second unit, which the other system prints first. */
    Optional<NumberStyle> second(UnitSystem system, double si) {
        return also.flatMap(
                symbol -> Optional.of(of(other(system), unit.dimension(), si)).filter(s -> s.symbol.equals(symbol)));
    }

    static UnitSystem other(UnitSystem system) {
        return system == UnitSystem.METRIC ? UnitSystem.INCH : UnitSystem.METRIC;
    }

    private static List<NumberStyle> styles(UnitSystem system, Dimension dimension) {
        List<NumberStyle> styles = ALL.getOrDefault(system, Map.of()).get(dimension);
        if (styles == null) {
            throw new IllegalArgumentException("no way to print " + dimension + " in " + system);
        }
        return styles;
    }

    private static Map<UnitSystem, Map<Dimension, List<NumberStyle>>> load() {
        Map<UnitSystem, Map<Dimension, List<NumberStyle>>> all = new EnumMap<>(UnitSystem.class);
        for (Row row : Table.of(NumberStyle.class, "number-styles.csv").rows()) {
            List<NumberStyle> styles = all.computeIfAbsent(
                            UnitSystem.valueOf(row.text("system")), s -> new EnumMap<>(Dimension.class))
                    .computeIfAbsent(Dimension.valueOf(row.text("dimension")), d -> new java.util.ArrayList<>());
            styles.add(read(row));
            styles.sort(Comparator.comparingDouble(NumberStyle::from));
        }
        return all;
    }

    private static NumberStyle read(Row row) {
        String symbol = row.optionalText("unit").orElse("");
        return new NumberStyle(
                row.number("from"),
                Units.of(Dimension.valueOf(row.text("dimension")), symbol.isEmpty() ? "1" : symbol),
                symbol,
                (int) row.number("figures"),
                row.number("finest"),
                row.number("coarsest"),
                row.optionalText("also"));
    }
}
