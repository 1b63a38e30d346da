package org.strawblue.core.evidence.diagnosis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.CriticalPoints;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.HardeningHeat;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * A family of steels and what to do with one of it.
 *
 * @param grades of the catalogue, that stand for it
 * @param quench its kind of quench; "none" where it is not hardened
 */
public record Family(String key, List<Grade> grades, String quench, String advice, List<String> hazards) {

    public Family {
        grades = List.copyOf(grades);
        hazards = List.copyOf(hazards);
    }

    static Family of(String key) {
        return Table.of(Family.class, "families.csv").rows().stream()
                .filter(r -> r.text("key").equals(key))
                .map(Family::family)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no family " + key));
    }

    private static Family family(Row row) {
        return new Family(
                row.text("key"),
                list(row, "grades").stream().map(Grades::of).toList(),
                row.text("quench"),
                row.text("advice"),
                list(row, "hazards"));
    }

    private static List<String> list(Row row, String column) {
        return row.optionalText(column).map(t -> List.of(t.split("\\|"))).orElse(List.of());
    }

    /** Whether it is hardened by a quench at all. */
    public boolean hardens() {
        return !quench.equals("none");
    }

    /** Temperatures [K] to harden from of each of its grades. */
    public Map<Grade, Band> windows() {
        Map<Grade, Band> windows = new LinkedHashMap<>();
        for (Grade grade : hardens() ? grades : List.<Grade>of()) {
            CriticalPoints.of(grade)
                    .value()
                    .ifPresent(p ->
                            windows.put(grade, HardeningHeat.window(grade, p).band()));
        }
        return windows;
    }

    /** Temperatures [K] to harden from that suit all of its grades; absent where none does, or none is known. */
    public Optional<Band> window() {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (Band window : windows().values()) {
            low = Math.max(low, window.low());
            high = Math.min(high, window.high());
        }
        return Double.isFinite(low) && low <= high
                ? Optional.of(new Band(Dimension.TEMPERATURE, low, high))
                : Optional.empty();
    }
}
