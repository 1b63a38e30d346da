package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * One published tempering curve of a grade.
 *
 * @param points tempers, the whole time of repeated ones together, coldest first, and the hardness after them
 * @param tempers how often the piece was tempered
 * @param asQuenched hardness before [HRC]
 */
record TemperingSheet(List<Coupon> points, int tempers, OptionalDouble asQuenched, Set<Basis> bases) {

    private static final Unit CELSIUS = Units.of(Dimension.TEMPERATURE, "°C");
    private static final Unit HOURS = Units.of(Dimension.TIME, "h");

    private static final Map<String, List<TemperingSheet>> BY_GRADE =
            Table.of(TemperingSheet.class, "tempering-curves.csv").rows().stream()
                    .collect(Collectors.groupingBy(
                            r -> r.text("grade"),
                            Collectors.collectingAndThen(Collectors.toList(), TemperingSheet::sheets)));

    /** The published curves of a grade; none is an empty list. */
    static List<TemperingSheet> of(String grade) {
        return BY_GRADE.getOrDefault(grade, List.of());
    }

    static Set<String> grades() {
        return new TreeSet<>(BY_GRADE.keySet());
    }

    /** The time [s] of all its tempers together, geometric mean over the points. */
    double reference() {
        return Math.exp(points.stream()
                .mapToDouble(p -> Math.log(p.temper().seconds()))
                .average()
                .orElseThrow());
    }

    private static List<TemperingSheet> sheets(List<Row> ofGrade) {
        return ofGrade.stream().collect(Collectors.groupingBy(r -> r.text("sheet"))).values().stream()
                .map(TemperingSheet::sheet)
                .toList();
    }

    private static TemperingSheet sheet(List<Row> rows) {
        List<Coupon> points = new ArrayList<>();
        OptionalDouble asQuenched = OptionalDouble.empty();
        int tempers = 1;
        Set<Basis> bases = new TreeSet<>();
        for (Row row : rows) {
            bases.add(basis(row, row.text("standing")));
            if (row.optionalText("temperature_c").isEmpty()) {
                asQuenched = OptionalDouble.of(row.number("hrc"));
                continue;
            }
            tempers = (int) row.number("tempers");
            points.add(point(row));
            if (Standing.of(row.text("hold_standing")).weak()) {
                bases.add(new Basis("tempering time of " + row.text("grade"), "assumed", Standing.ASSUMED));
            }
        }
        points.sort(Comparator.comparingDouble(p -> p.temper().kelvin()));
        return new TemperingSheet(List.copyOf(points), tempers, asQuenched, bases);
    }

    private static Coupon point(Row row) {
        double seconds = HOURS.toSi(row.number("hold_h")) * row.number("tempers");
        return new Coupon(new Temper(CELSIUS.toSi(row.number("temperature_c")), seconds), row.number("hrc"));
    }

    private static Basis basis(Row row, String standing) {
        return new Basis("tempering curve of " + row.text("grade"), row.text("source"), Standing.of(standing));
    }
}
