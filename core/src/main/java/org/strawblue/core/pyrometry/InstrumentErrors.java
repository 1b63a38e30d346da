package org.strawblue.core.pyrometry;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * The error of each kind of indicator, from {@code instruments.csv}.
 *
 * <p>sd = √( (m/√3)² + s² ), m = max(a, b·(T − T₀)): the tolerance of the instrument, taken as a flat distribution, and
 * the scatter of its use.
 */
final class InstrumentErrors {

    private static final Map<String, Row> ROWS = Table.of(InstrumentErrors.class, "instruments.csv").rows().stream()
            .collect(Collectors.toUnmodifiableMap(r -> r.text("instrument"), r -> r));

    private InstrumentErrors() {}

    static boolean knows(String instrument) {
        return ROWS.containsKey(instrument);
    }

    static String words(String instrument) {
        return row(instrument).text("words");
    }

    static IndicationError at(String instrument, double kelvin) {
        Row row = row(instrument);
        double tolerance = Math.max(
                row.number("tolerance_K"), row.number("tolerance_share") * (kelvin - row.number("share_from_K")));
        double sd = Math.hypot(tolerance / Math.sqrt(3), row.number("use_sd_K"));
        return new IndicationError(
                tolerance,
                sd,
                new Basis("error of " + words(instrument), row.text("source"), Standing.of(row.text("standing"))));
    }

    private static Row row(String instrument) {
        return Optional.ofNullable(ROWS.get(instrument))
                .orElseThrow(() -> new IllegalArgumentException("no such indicator: " + instrument));
    }
}
