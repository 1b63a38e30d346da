package org.strawblue.core.watch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.ThermalHistory;
import org.strawblue.core.oxide.FilmColours;
import org.strawblue.core.oxide.FilmRun;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.TemperRun;
import org.strawblue.core.steel.Tempering;
import org.strawblue.core.steel.TemperingLaw;

/**
 * Two readings of one thermal history: hardness after tempering and film colour, at each named place, against time.
 *
 * <p>Hardness by the steel's own tempering law at the running equivalent time, colour by the running growth of the film;
 * range, errors and sources are those of {@link TemperRun} and {@link FilmRun}. Intervals are those of the two laws for this
 * one history; how well the history itself is known is not in them.
 */
public record TemperWatch(Map<Place, PlaceWatch> places) {

    public TemperWatch {
        places = java.util.Collections.unmodifiableMap(new EnumMap<>(places));
    }

    /**
     * @param chromium of the steel [mass %]
     * @return refused where no tempering law is known of the steel; a colour that cannot be told is a finding
     */
    public static Answer<TemperWatch> of(ThermalHistory history, Steel steel, Light light, double chromium) {
        return Tempering.law(steel).then(law -> of(history, law, light, chromium));
    }

    private static Answer<TemperWatch> of(ThermalHistory history, TemperingLaw law, Light light, double chromium) {
        Map<Place, PlaceWatch> places = new EnumMap<>(Place.class);
        List<Finding> findings = new ArrayList<>();
        history.traces().forEach((place, trace) -> {
            Answer<FilmRun> film = FilmColours.standard().along(trace, light, chromium);
            film.findings().stream().filter(f -> !findings.contains(f)).forEach(findings::add);
            places.put(place, new PlaceWatch(trace, TemperRun.of(law, trace), film));
        });
        return Answer.of(
                new TemperWatch(places),
                findings.stream().map(TemperWatch::softened).toList());
    }

    /** That a colour cannot be told does not stop a temper. */
    private static Finding softened(Finding finding) {
        return finding instanceof Finding.Stop stop
                ? new Finding.Caution(stop.what(), stop.why(), stop.remedy())
                : finding;
    }

    public Optional<PlaceWatch> at(Place place) {
        return Optional.ofNullable(places.get(place));
    }

    /** The place that came out most tempered. */
    public PlaceWatch most() {
        return places.values().stream().max(byTemper()).orElseThrow();
    }

    /** The place that came out least tempered. */
    public PlaceWatch least() {
        return places.values().stream().min(byTemper()).orElseThrow();
    }

    private static Comparator<PlaceWatch> byTemper() {
        return Comparator.comparingDouble(p -> p.temper().parameter());
    }
}
