package org.strawblue.core.evidence.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
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

    /** Temperatures [K] to harden from that suit most of its grades; absent where none is known. */
    public Optional<Band> window() {
        List<Estimate> windows = new ArrayList<>();
        grades.forEach(g -> CriticalPoints.of(g).value().ifPresent(p -> windows.add(HardeningHeat.window(g, p))));
        if (windows.isEmpty() || !hardens()) {
            return Optional.empty();
        }
        double low = windows.stream().mapToDouble(Estimate::low).max().orElseThrow();
        double high = windows.stream().mapToDouble(Estimate::high).min().orElseThrow();
        return Optional.of(Band.between(Dimension.TEMPERATURE, low, high));
    }
}
