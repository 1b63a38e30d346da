package org.strawblue.core.evidence.observe;

import java.util.OptionalDouble;
import org.strawblue.core.history.Place;

/**
 * Where and when.
 *
 * @param seconds after the heat began [s]; absent where it was not noted
 */
public record Seen(Place place, OptionalDouble seconds) {

    /** On top, some time: what is taken where nothing is said. */
    public static final Seen SOME_TIME = new Seen(Place.TOP, OptionalDouble.empty());

    public static Seen at(Place place, double seconds) {
        return new Seen(place, OptionalDouble.of(seconds));
    }
}
