package org.strawblue.core.fit;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;
import org.strawblue.core.table.Vocabulary;

/**
 * c(T) = c₂₀ + D (α_h − α_s)(T − 20 °C): clearance at a temperature; c₂₀ + D α_h (T − 20 °C) where the hole alone is warm.
 *
 * <p>c clearance [m], D nominal size [m], α mean linear expansion [1/K]. Range: room temperature to about 150 °C. Source:
 * {@code expansion.csv}; 20 °C is the temperature at which sizes are told (ISO 1).
 */
public record Expansion(String material, Estimate coefficient) {

    private static final double MICRO = 1e-6;
    private static final double REFERENCE = Figures.ALL.si("reference_temperature", Dimension.TEMPERATURE);
    private static final Vocabulary<Expansion> WORDS = words();

    public static Optional<Expansion> find(String word) {
        return WORDS.meanings(word).stream().findFirst();
    }

    /** The names they go by. */
    public static List<String> names() {
        return Table.of(Expansion.class, "expansion.csv").rows().stream()
                .map(r -> r.text("material"))
                .toList();
    }

    /** Clearance [m] when both parts are at a temperature [K]. */
    public static Estimate clearanceAt(Estimate at20, double nominal, Expansion hole, Expansion shaft, double kelvin) {
        double rise = kelvin - REFERENCE;
        return hole.material.equals(shaft.material)
                ? at20
                : shifted(shifted(at20, nominal * rise, hole.coefficient), -nominal * rise, shaft.coefficient);
    }

    /** The temperature [K] at which a warm hole takes a shaft at room temperature with {@code room} [m] to spare. */
    public static double warmUntil(double interference, double room, double nominal, Expansion hole) {
        return REFERENCE + (interference + room) / (nominal * hole.coefficient.low());
    }

    private static Estimate shifted(Estimate from, double perUnit, Estimate coefficient) {
        double half = Math.abs(perUnit) * (coefficient.high() - coefficient.low()) / 2;
        Estimate wide = from.widened(half, half, coefficient.bases());
        double by = perUnit * coefficient.value();
        return Estimate.of(Dimension.LENGTH, wide.value() + by, wide.low() + by, wide.high() + by, wide.bases());
    }

    private static Vocabulary<Expansion> words() {
        Vocabulary<Expansion> words = new Vocabulary<>();
        for (Row row : Table.of(Expansion.class, "expansion.csv").rows()) {
            Expansion metal = of(row);
            words.add(metal.material, metal);
            for (String also : row.optionalText("also").orElse(metal.material).split("\\|")) {
                words.add(also, metal);
            }
        }
        return words;
    }

    private static Expansion of(Row row) {
        String material = row.text("material");
        return new Expansion(
                material,
                Estimate.of(
                        Dimension.NUMBER,
                        row.number("value_1e6_per_K") * MICRO,
                        row.number("low_1e6_per_K") * MICRO,
                        row.number("high_1e6_per_K") * MICRO,
                        new Basis("expansion of " + material, row.text("source"), Standing.of(row.text("standing")))));
    }
}
