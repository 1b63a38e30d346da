package org.strawblue.core.spring;

import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/** Springs and pockets for the tests, in millimetres and newtons. */
final class Drawer {

    private Drawer() {}

    static MeasuredSpring spring(
            String name, double wire, double outside, double free, double coils, EndType ends, String material) {
        return new MeasuredSpring(
                name,
                0,
                wire / 1000,
                outside / 1000,
                free / 1000,
                coils,
                Optional.of(Ends.both(ends)),
                Optional.of(material),
                MeasurementErrors.usual(),
                1);
    }

    /** 0 bore or rod: none. */
    static Pocket pocket(double bore, double rod, double length, double travel, double[] rest, double[] full) {
        return new Pocket(
                "pocket",
                bore > 0 ? OptionalDouble.of(bore / 1000) : OptionalDouble.empty(),
                rod > 0 ? OptionalDouble.of(rod / 1000) : OptionalDouble.empty(),
                length / 1000,
                travel / 1000,
                band(rest),
                band(full),
                Optional.of(Seating.BOTH_FLAT),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    static Optional<Band> band(double... newtons) {
        return newtons.length == 2 ? Optional.of(new Band(Dimension.FORCE, newtons[0], newtons[1])) : Optional.empty();
    }
}
