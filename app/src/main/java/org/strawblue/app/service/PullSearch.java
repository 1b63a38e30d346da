package org.strawblue.app.service;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.conduction.Conduction;
import org.strawblue.core.heat.conduction.Fineness;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Reduced;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.ThermalHistory;
import org.strawblue.core.history.Trace;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.watch.Goal;
import org.strawblue.core.watch.PullWindow;
import org.strawblue.core.watch.TemperWatch;

/** Looks for the moment to take a part off a heat. */
final class PullSearch {

    private static final Fineness COARSE = new Fineness(12, 6, 40);
    private static final double TOLERANCE = 0.05;
    private static final int POINTS = 48;
    private static final double SHORTEST = 0.25;
    private static final double TYPICAL = Units.of(Dimension.TIME, "min").toSi(10);

    private final HeatRequest request;
    private final List<Place> places;
    private final boolean fast;

    PullSearch(HeatRequest request, List<Place> places, boolean fast) {
        this.request = request;
        this.places = places;
        this.fast = fast;
    }

    /** The measure of what is wanted. */
    Answer<Goal> goal() {
        HeatTarget target = request.target().orElseThrow();
        if (target instanceof HeatTarget.Colours colours) {
            return Goal.colours(colours.first(), colours.last(), request.light(), request.chromium());
        }
        return steel().then(s -> Goal.hardness(s, ((HeatTarget.Hardness) target).wanted(), TYPICAL));
    }

    Answer<PullWindow> window(Goal goal) {
        return steel().then(s -> PullWindow.of(
                t -> watch(s, t),
                goal,
                Math.min(SHORTEST, request.main().seconds()),
                request.main().seconds()));
    }

    private Answer<Steel> steel() {
        return request.steel()
                .map(Answer::of)
                .orElseGet(() -> Answer.refused(new Finding.Stop(
                        Phrase.of("The steel is not told."),
                        Phrase.of("How far it softens in a heat is a matter of the steel."),
                        Phrase.of("Add --grade, or --composition."))));
    }

    private TemperWatch watch(Steel steel, double seconds) {
        return TemperWatch.of(history(seconds), steel, request.light(), request.chromium())
                .value()
                .orElseThrow();
    }

    /** What the places that count go through from when on they are read, taken off after a time [s]. */
    private ThermalHistory history(double seconds) {
        Course course = request.takenOffAfter(seconds);
        ThermalHistory all = fast ? quick(course) : full(course);
        Map<Place, Trace> counting = new EnumMap<>(Place.class);
        all.from(request.readFrom()).traces().forEach((place, trace) -> {
            if (places.contains(place)) {
                counting.put(place, trace);
            }
        });
        return new ThermalHistory(counting.isEmpty() ? all.traces() : counting);
    }

    private static ThermalHistory full(Course course) {
        return Conduction.run(course, COARSE, TOLERANCE).value().orElseThrow().history();
    }

    private static ThermalHistory quick(Course course) {
        return Reduced.plain().run(course, times(course)).history();
    }

    /** More closely at the start of each spell, where most happens. */
    private static double[] times(Course course) {
        int spells = course.spells().size();
        double[] times = new double[spells * POINTS + 1];
        double start = 0;
        int k = 1;
        for (Spell spell : course.spells()) {
            for (int i = 1; i <= POINTS; i++) {
                double share = (double) i / POINTS;
                times[k++] = start + spell.seconds() * share * share;
            }
            start += spell.seconds();
        }
        return times;
    }
}
