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

    /** What comes after a time [s], which becomes its 0. */
    public ThermalHistory from(double time) {
        Map<Place, Trace> later = new EnumMap<>(Place.class);
        traces.forEach((place, trace) -> later.put(place, trace.from(time)));
        return new ThermalHistory(later);
    }

    /** One place of it alone. */
    public ThermalHistory only(Place place) {
        return at(place).map(t -> new ThermalHistory(Map.of(place, t))).orElse(this);
    }

    public Optional<Trace> at(Place place) {
        return Optional.ofNullable(traces.get(place));
    }
}
