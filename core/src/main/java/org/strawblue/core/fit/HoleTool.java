package org.strawblue.core.fit;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** A way to bring a round hole to its limits, and what to mind; {@code hole-tools.csv}. */
public record HoleTool(String key, String label, Phrase words) {

    private static final Unit MM = Units.of(Dimension.LENGTH, "mm");
    private static final List<Row> ROWS =
            Table.of(HoleTool.class, "hole-tools.csv").rows();
    private static final String REAMER = "reamer";

    /** The quickest way to these limits [m] in soft steel; for a reamer with the reamer's own size. */
    public static List<HoleTool> soft(double nominal, Band hole) {
        return ways(nominal, hole, "soft").limit(1).toList();
    }

    /** The quickest way in hardened steel. */
    public static List<HoleTool> hard(double nominal, Band hole) {
        return ways(nominal, hole, "hard").limit(1).toList();
    }

    private static Stream<HoleTool> ways(double nominal, Band hole, String state) {
        return ROWS.stream()
                .filter(r -> r.text("state").equals(state))
                .filter(r -> Limits.within(nominal, MM.toSi(r.number("over_mm")), MM.toSi(r.number("upto_mm"))))
                .filter(r -> holds(r, nominal, hole))
                .map(r -> of(r, hole));
    }

    /** Whether the grade the tool holds is as fine as the hole's width. */
    private static boolean holds(Row row, double nominal, Band hole) {
        OptionalDouble width = ToleranceGrades.of(nominal, (int) row.number("grade"));
        return width.isPresent() && width.getAsDouble() <= hole.width() * (1 + 1e-6);
    }

    private static HoleTool of(Row row, Band hole) {
        String how = row.text("how");
        if (row.text("tool").equals(REAMER)) {
            return new HoleTool(
                    REAMER, row.text("label"), Phrase.of("reamer of {}; " + how, Reamer.forHole(hole), take(row)));
        }
        return new HoleTool(
                row.text("tool"), row.text("label"), how.contains("{}") ? Phrase.of(how, take(row)) : Phrase.of(how));
    }

    private static Band take(Row row) {
        return new Band(Dimension.LENGTH, MM.toSi(row.number("take_low_mm")), MM.toSi(row.number("take_high_mm")));
    }
}
