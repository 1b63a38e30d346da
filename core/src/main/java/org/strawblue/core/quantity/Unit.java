package org.strawblue.core.quantity;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A unit of one dimension: {@code si = value × factor + offset}. Its dimension and symbol tell it from all others.
 *
 * @param symbol how it is printed
 * @param names every way people write it, the symbol included
 */
public record Unit(String symbol, Dimension dimension, double factor, double offset, Set<String> names) {

    public Unit {
        names = Set.copyOf(names);
    }

    /** From this unit to the core's. */
    public double toSi(double value) {
        return value * factor + offset;
    }

    /** From the core's unit to this one. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Unit unit && dimension == unit.dimension && symbol.equals(unit.symbol);
    }

    @Override
    public int hashCode() {
        return symbol.hashCode();
    }
}
