package org.strawblue.app.input;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * What a text should say.
 *
 * @param phrase the thing with an example, for the error: "a size such as 6 mm"
 * @param range believable values, in the core's unit
 * @param bare the unit of a number that stands alone; absent where a unit must be written
 * @param about how far "about" reaches to each side, in the core's unit or as a share of the value
 * @param aboutIsShare whether it is a share
 */
public record Expectation(
        Dimension dimension, String phrase, Band range, Optional<Unit> bare, double about, boolean aboutIsShare) {

    private static final Map<UnitSystem, Map<Dimension, Expectation>> ALL = all();

    /** Of any quantity of this dimension. */
    public static Expectation of(Dimension dimension, UnitSystem units) {
        return Optional.ofNullable(ALL.get(units))
                .map(expected -> expected.get(dimension))
                .orElseThrow(() -> new IllegalArgumentException("nobody writes a " + dimension));
    }

    private static Expectation of(Dimension dimension, UnitSystem units, Row row) {
        Optional<Unit> bare = row.optionalText(units == UnitSystem.INCH ? "inch_unit" : "metric_unit")
                .map(u -> Units.of(dimension, u));
        String aboutUnit = row.text("about_unit");
        boolean share = aboutUnit.equals("1");
        double about = row.number("about") * (share ? 1 : difference(dimension, aboutUnit));
        return new Expectation(dimension, row.text("phrase"), range(dimension, row), bare, about, share);
    }

    /** The same, of values within narrower limits. */
    public Expectation within(Band narrower) {
        return new Expectation(dimension, phrase, narrower, bare, about, aboutIsShare);
    }

    /** The same, with this meaning of a number that stands alone. */
    public Expectation bare(Unit unit) {
        return new Expectation(dimension, phrase, range, Optional.of(unit), about, aboutIsShare);
    }

    /** How far "about {@code si}" reaches to each side, in the core's unit. */
    double aboutOf(double si) {
        return aboutIsShare ? about * Math.abs(si) : about;
    }

    private static double difference(Dimension dimension, String unit) {
        return Units.of(dimension, unit).factor();
    }

    private static Band range(Dimension dimension, Row row) {
        Unit unit = Units.of(dimension, row.text("range_unit"));
        return new Band(dimension, unit.toSi(row.number("low")), unit.toSi(row.number("high")));
    }

    private static Map<UnitSystem, Map<Dimension, Expectation>> all() {
        Map<UnitSystem, Map<Dimension, Expectation>> all = new EnumMap<>(UnitSystem.class);
        for (Row row : Table.of(Expectation.class, "expected.csv").rows()) {
            Dimension dimension = Dimension.valueOf(row.text("dimension"));
            for (UnitSystem units : UnitSystem.values()) {
                all.computeIfAbsent(units, u -> new EnumMap<>(Dimension.class))
                        .put(dimension, of(dimension, units, row));
            }
        }
        return all;
    }
}
