package org.strawblue.core.pyrometry;

import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** Surfaces an infrared gun may look at, with their emissivity over 8 to 14 µm from {@code emissivity.csv}. */
public enum Surface {
    BRIGHT,
    GROUND,
    HARDENED,
    OXIDISED,
    PAINTED,
    SOOTED;

    private static final Map<String, Row> ROWS = Table.of(Surface.class, "emissivity.csv").rows().stream()
            .collect(Collectors.toUnmodifiableMap(r -> r.text("surface"), r -> r));

    public String words() {
        return row().text("words");
    }

    /** Emissivity with its 80 % interval [1]. */
    public Estimate emissivity() {
        Row row = row();
        return Estimate.of(
                Dimension.FRACTION,
                row.number("emissivity"),
                row.number("low"),
                row.number("high"),
                new Basis("emissivity of " + words(), row.text("source"), Standing.of(row.text("standing"))));
    }

    private Row row() {
        return Objects.requireNonNull(ROWS.get(name()));
    }
}
