package org.strawblue.core.estimate;

import java.util.Collection;
import java.util.Collections;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;

/**
 * A computed number as it must be told: central value, 80 % interval, what it rests on.
 *
 * @param value central value, in the unit of {@link Dimension#si()}
 * @param low one chance in ten that the truth lies below
 * @param high one chance in ten that the truth lies above
 */
public record Estimate(Dimension dimension, double value, double low, double high, SortedSet<Basis> bases) {

    public Estimate {
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException("not in order: " + low + ", " + value + ", " + high);
        }
        bases = Collections.unmodifiableSortedSet(new TreeSet<>(bases));
    }

    public static Estimate of(Dimension dimension, double value, double low, double high, Collection<Basis> bases) {
        return new Estimate(dimension, value, low, high, new TreeSet<>(bases));
    }

    public static Estimate of(Dimension dimension, double value, double low, double high, Basis... bases) {
        return of(dimension, value, low, high, Set.of(bases));
    }

    public Quantity quantity() {
        return new Quantity(dimension, value);
    }

    public Band band() {
        return new Band(dimension, low, high);
    }

    /**
     * Chance [1] that the truth lies within {@code limits}, each side of the interval taken as half a normal curve.
     */
    public double chanceWithin(Band limits) {
        return Math.max(0, chanceBelow(limits.high()) - chanceBelow(limits.low()));
    }

    /** Chance [1] that the truth lies below {@code x}. */
    public double chanceBelow(double x) {
        double half = x < value ? value - low : high - value;
        if (half == 0) {
            return x < value ? 0 : x > value ? 1 : 0.5;
        }
        return Normal.below((x - value) / half * Normal.HALF_OF_80);
    }

    /** The same value with a further, independent error: half widths of its 80 % interval below and above. */
    public Estimate widened(double below, double above, Collection<Basis> because) {
        SortedSet<Basis> all = new TreeSet<>(bases);
        all.addAll(because);
        return new Estimate(
                dimension, value, value - Math.hypot(value - low, below), value + Math.hypot(high - value, above), all);
    }

    /** Whether any number under this one is from memory or assumed. */
    public boolean weak() {
        return bases.stream().anyMatch(b -> b.standing().weak());
    }
}
