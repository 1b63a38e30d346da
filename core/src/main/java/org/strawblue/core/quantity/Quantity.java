package org.strawblue.core.quantity;

import org.jspecify.annotations.Nullable;

/** A number and its dimension. {@code si} is in the unit of {@link Dimension#si()}. */
public record Quantity(Dimension dimension, double si) implements Amount {

    /** [m] */
    public static Quantity length(double metres) {
        return new Quantity(Dimension.LENGTH, metres);
    }

    /** [K] */
    public static Quantity temperature(double kelvin) {
        return new Quantity(Dimension.TEMPERATURE, kelvin);
    }

    /** [K] */
    public static Quantity temperatureDifference(double kelvin) {
        return new Quantity(Dimension.TEMPERATURE_DIFFERENCE, kelvin);
    }

    /** [s] */
    public static Quantity time(double seconds) {
        return new Quantity(Dimension.TIME, seconds);
    }

    /** [N] */
    public static Quantity force(double newtons) {
        return new Quantity(Dimension.FORCE, newtons);
    }

    /** [HRC] */
    public static Quantity hardness(double hrc) {
        return new Quantity(Dimension.HARDNESS, hrc);
    }

    /** [1] */
    public static Quantity number(double value) {
        return new Quantity(Dimension.NUMBER, value);
    }

    /** [1], from 0 to 1 */
    public static Quantity fraction(double share) {
        return new Quantity(Dimension.FRACTION, share);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Quantity q && dimension == q.dimension && Double.compare(si, q.si) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * dimension.hashCode() + Double.hashCode(si);
    }
}
