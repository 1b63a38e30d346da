package org.strawblue.core.fit;

import java.util.List;
import java.util.OptionalDouble;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** Standard tolerances IT3 to IT13 of ISO 286-1, as printed in {@code tolerance_grades.csv}. */
public final class ToleranceGrades {

    private static final Unit MM = Units.of(Dimension.LENGTH, "mm");
    private static final Unit MICRON = Units.of(Dimension.LENGTH, "µm");
    private static final List<Row> ROWS =
            Table.of(ToleranceGrades.class, "tolerance_grades.csv").rows();

    private ToleranceGrades() {}

    /** Width of the zone [m] for a nominal size [m]; absent outside the table. */
    public static OptionalDouble of(double nominal, int grade) {
        return ROWS.stream()
                .filter(r -> within(r, nominal))
                .map(r -> r.optionalNumber("IT" + grade + "_um"))
                .findFirst()
                .filter(OptionalDouble::isPresent)
                .map(um -> OptionalDouble.of(MICRON.toSi(um.getAsDouble())))
                .orElse(OptionalDouble.empty());
    }

    /** Largest nominal size of the table [m]. */
    static double largest() {
        return MM.toSi(ROWS.get(ROWS.size() - 1).number("upto_mm"));
    }

    /** Whether the size lies in the table's first step, where some rules are others. */
    static boolean firstStep(double nominal) {
        return within(ROWS.get(0), nominal);
    }

    static List<Basis> bases(double nominal, int grade) {
        return ROWS.stream()
                .filter(r -> within(r, nominal))
                .map(r -> new Basis("tolerance IT" + grade, r.text("source"), Standing.of(r.text("standing"))))
                .toList();
    }

    static boolean within(Row row, double nominal) {
        return Limits.within(nominal, MM.toSi(row.number("over_mm")), MM.toSi(row.number("upto_mm")));
    }
}
