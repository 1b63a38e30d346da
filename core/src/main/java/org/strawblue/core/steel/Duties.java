package org.strawblue.core.steel;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** How hard a tool should be for what it has to do, by common practice and, for some, published figures. */
public final class Duties {

    private static final List<Row> ROWS = Table.of(Duties.class, "duties.csv").rows();
    private static final List<Row> HARDNESS =
            Table.of(Duties.class, "duty-hardness.csv").rows();
    private static final List<Duty> ALL = ROWS.stream().map(Duties::duty).toList();

    private Duties() {}

    /** The duty people call {@code name}, in UK or US words. */
    public static Optional<Duty> find(String name) {
        String word = name.strip().replaceAll("\\s+", " ");
        return ALL.stream()
                .filter(d -> d.names().stream().anyMatch(word::equalsIgnoreCase))
                .findFirst();
    }

    public static List<Duty> all() {
        return ALL;
    }

    /** The hardness wanted [HRC] for a duty of a part made of this grade: middle and limits of what is usual. */
    public static Answer<Estimate> hardness(Duty duty, String grade) {
        return row(duty.key(), grade)
                .or(() -> instead(duty).flatMap(other -> row(other, grade)))
                .map(r -> Answer.of(estimate(duty, r)))
                .orElseGet(() -> Answer.refused(none(duty, grade)));
    }

    private static Estimate estimate(Duty duty, Row row) {
        double low = row.number("low_hrc");
        double high = row.number("high_hrc");
        Basis basis = new Basis(
                "hardness of " + row.text("grade") + " for " + duty.key(),
                row.text("source"),
                Standing.of(row.text("standing")));
        return Estimate.of(Dimension.HARDNESS, (low + high) / 2, low, high, basis);
    }

    private static Optional<Row> row(String duty, String grade) {
        return HARDNESS.stream()
                .filter(r -> r.text("duty").equals(duty) && r.text("grade").equals(grade))
                .findFirst();
    }

    private static Optional<String> instead(Duty duty) {
        return ROWS.stream()
                .filter(r -> r.text("key").equals(duty.key()))
                .findFirst()
                .flatMap(r -> r.optionalText("as"));
    }

    private static Finding none(Duty duty, String grade) {
        String others = HARDNESS.stream()
                .filter(r -> r.text("grade").equals(grade))
                .map(r -> r.text("duty"))
                .collect(Collectors.joining(", "));
        return new Finding.Stop(
                Phrase.of("No usual hardness is known of " + grade + " for " + duty.key()),
                Phrase.of(
                        others.isEmpty()
                                ? "The steel has no figures by duty here."
                                : "It is not commonly used so; it has figures for " + others + "."),
                Phrase.of("State the hardness you want, or choose another steel."));
    }

    private static Duty duty(Row row) {
        Set<String> names = new HashSet<>(Arrays.asList(row.text("names").split("\\|")));
        names.add(row.text("key"));
        return new Duty(row.text("key"), names);
    }
}
