package org.strawblue.core.spring.wind;

import java.util.Optional;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.spring.SpringMaterial;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * The heat that takes the strain of winding out of a wire.
 *
 * @param temperature [K]
 * @param range that is used in the trade [K]
 * @param time [s]
 * @param change of the mean diameter, as a share of it; below 0 it closes [1]
 * @param limit never to be passed; absent where none is known [K]
 */
public record StressRelief(
        double temperature, Band range, double time, Band change, Optional<Double> limit, Basis basis) {

    private static final Unit CELSIUS = Units.of(Dimension.TEMPERATURE, "°C");
    private static final Unit MINUTE = Units.of(Dimension.TIME, "min");

    /** Absent where no practice is known for this wire. */
    public static Optional<StressRelief> of(SpringMaterial material) {
        return Table.of(StressRelief.class, "stress_relief.csv").rows().stream()
                .filter(r -> r.text("material").equals(material.key().name()))
                .findFirst()
                .map(StressRelief::read);
    }

    private static StressRelief read(Row row) {
        Basis basis = new Basis("stress relief of wire", row.text("source"), Standing.of(row.text("standing")));
        return new StressRelief(
                CELSIUS.toSi(row.number("temperature_C")),
                new Band(Dimension.TEMPERATURE, CELSIUS.toSi(row.number("low_C")), CELSIUS.toSi(row.number("high_C"))),
                MINUTE.toSi(row.number("minutes")),
                new Band(Dimension.FRACTION, row.number("change_low"), row.number("change_high")),
                row.optionalText("never_above_C").map(t -> CELSIUS.toSi(row.number("never_above_C"))),
                basis);
    }

    /** What the mean diameter must be before, to be right after [m]. */
    public double before(double meanDiameter) {
        return meanDiameter / (1 + change.middle());
    }
}
