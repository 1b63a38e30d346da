package org.strawblue.core.evidence.learn;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * How far jobs with one thing differ.
 *
 * @param device what kind of thing the influence belongs to
 * @param spread scale of the half-normal, on the scale of the bell
 */
record JobSpread(String device, Dimension dimension, double spread, Basis basis) {

    private static final Map<Influence, JobSpread> ALL = read();

    /** Absent where the influence belongs to no thing that stays. */
    static Optional<JobSpread> of(Influence influence) {
        return Optional.ofNullable(ALL.get(influence));
    }

    private static Map<Influence, JobSpread> read() {
        Map<Influence, JobSpread> all = new EnumMap<>(Influence.class);
        for (Row row : Table.of(JobSpread.class, "job-spread.csv").rows()) {
            Influence influence = Influence.of(row.text("influence")).orElseThrow();
            Basis basis = new Basis(
                    "how far jobs differ in " + influence.key(), row.text("source"), Standing.of(row.text("standing")));
            all.put(
                    influence,
                    new JobSpread(
                            row.text("device"), Dimension.valueOf(row.text("dimension")), row.number("spread"), basis));
        }
        return all;
    }
}
