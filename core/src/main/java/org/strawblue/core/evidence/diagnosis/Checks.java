package org.strawblue.core.evidence.diagnosis;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * Causes of which the laws of the other rooms tell the chance. A check that lacks something of the job, or whose law does not hold
 * there, says nothing.
 *
 * <p>A check raises its cause by (chance that it is so) / (how often it is so in jobs as they come), within limits.
 */
final class Checks {

    private static final Map<String, Function<Known, Optional<Check>>> ALL = Map.ofEntries(
            Map.entry("heat", HeatChecks::heat),
            Map.entry("soak", HeatChecks::soak),
            Map.entry("skin", HeatChecks::skin),
            Map.entry("overheated", HeatChecks::overheated),
            Map.entry("slender", HeatChecks::slender),
            Map.entry("quench", QuenchChecks::quench),
            Map.entry("carbon", QuenchChecks::carbon),
            Map.entry("fierce", QuenchChecks::fierce),
            Map.entry("temper-hard", TemperChecks::tooHard),
            Map.entry("temper-soft", TemperChecks::tooSoft),
            Map.entry("time", TemperChecks::time),
            Map.entry("chromium", TemperChecks::chromium));

    private static final Table USUAL = Table.of(Checks.class, "checks.csv");

    private Checks() {}

    static Optional<Check> of(String key, Known known) {
        Function<Known, Optional<Check>> check = ALL.get(key);
        return check == null ? Optional.empty() : check.apply(known);
    }

    /** By how much a check raises its cause [1]. */
    static double factor(String key, Check check) {
        double most = Figures.number("check-most");
        return Math.max(1 / most, Math.min(most, check.chance() / usual(key)));
    }

    private static double usual(String key) {
        for (Row row : USUAL.rows()) {
            if (row.text("key").equals(key)) {
                return row.number("usual");
            }
        }
        throw new IllegalStateException("no check " + key);
    }
}
