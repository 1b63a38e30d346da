package org.strawblue.core.history;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Temperature against time at the named places of one part. */
public record ThermalHistory(Map<Place, Trace> traces) {

    public ThermalHistory {
        if (traces.isEmpty()) {
            throw new IllegalArgumentException("a history needs at least one place");
        }
        traces = Map.copyOf(new EnumMap<>(traces));
    }

    /** A part so evenly heated that one trace serves for all of it. */
    public static ThermalHistory even(Trace trace) {
        return new ThermalHistory(Map.of(Place.SURFACE, trace, Place.CORE, trace));
    }

    public Optional<Trace> at(Place place) {
        return Optional.ofNullable(traces.get(place));
    }
}
