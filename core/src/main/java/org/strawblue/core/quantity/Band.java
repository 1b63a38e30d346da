package org.strawblue.core.quantity;

import org.jspecify.annotations.Nullable;

/** Two limits of one dimension, {@code low} ≤ {@code high}, both in the unit of {@link Dimension#si()}. */
public record Band(Dimension dimension, double low, double high) implements Amount {

    public Band {
        if (!(low <= high)) {
            throw new IllegalArgumentException("limits in the wrong order: " + low + ", " + high);
        }
    }

    /** The band between two values given in either order. */
    public static Band between(Dimension dimension, double a, double b) {
        return new Band(dimension, Math.min(a, b), Math.max(a, b));
    }

    public double middle() {
        return (low + high) / 2;
    }

    public double width() {
        return high - low;
    }

    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    /** The nearest value within the band. */
    public double clamp(double value) {
        return Math.max(low, Math.min(high, value));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Band b
                && dimension == b.dimension
                && Double.compare(low, b.low) == 0
                && Double.compare(high, b.high) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * dimension.hashCode() + Double.hashCode(low)) + Double.hashCode(high);
    }
}
