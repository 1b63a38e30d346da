package org.strawblue.core.spring;

import java.util.Optional;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * R = A / d^m, the textbooks' fit of the tables.
 *
 * <p>d wire [mm], A [MPa·mm^m], m [1]; constants and ranges in {@code strength_power.csv}. Against the ASTM minimum it
 * reads from 3 % low to 7 % high, so that {@link StrengthTable} rules wherever it has a row. Source: engineering
 * textbooks, table 10-4.
 */
public record PowerStrength(SpringMaterial.Key material) implements StrengthLaw {

    private static final Unit MM = Units.of(Dimension.LENGTH, "mm");
    private static final Unit MPA = Units.of(Dimension.STRESS, "MPa");

    @Override
    public Optional<Strength> at(double wire) {
        double mm = MM.fromSi(wire);
        return Table.of(PowerStrength.class, "strength_power.csv").rows().stream()
                .filter(r -> r.text("strength").equals(material.name()))
                .filter(r -> r.number("over_mm") <= mm && mm <= r.number("upto_mm"))
                .findFirst()
                .map(r -> new Strength(MPA.toSi(r.number("A_MPa") / Math.pow(mm, r.number("m"))), basis(r)));
    }

    private static Basis basis(Row row) {
        return new Basis("tensile strength, fitted", row.text("source"), Standing.of(row.text("standing")));
    }
}
