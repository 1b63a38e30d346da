package org.strawblue.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.strawblue.core.heat.course.CourseRun;
import org.strawblue.core.heat.course.SectionGrid;
import org.strawblue.core.history.Place;
import org.strawblue.core.part.PartShape;

/** Which places of a part are told, and what they are called. */
record PlaceNames(HeatRequest request, CourseRun run) {

    /** In the order in which they are told. */
    List<Place> told() {
        if (request.logged()) {
            return List.of(Place.SURFACE);
        }
        List<Place> places = new ArrayList<>();
        for (Place place : Place.values()) {
            boolean same = rod() && place == Place.SURFACE && !(request.shape() instanceof PartShape.SteppedPin);
            if (run.history().at(place).isPresent() && !same) {
                places.add(place);
            }
        }
        // along a rod the end that works comes first
        if (rod()) {
            places.sort((a, b) -> Boolean.compare(b == Place.EDGE, a == Place.EDGE));
            places.sort((a, b) -> Boolean.compare(a == Place.CORE, b == Place.CORE));
        }
        return places;
    }

    /** Those whose colour and hardness are told: of a part hardened at one end only that end. */
    List<Place> read() {
        return request.hardened() && request.partly() ? List.of(Place.EDGE) : told();
    }

    /** Those that must all be right: of a part heated in one stretch the end that works. */
    List<Place> mustBeRight() {
        return request.partly() ? List.of(Place.EDGE) : told();
    }

    /** Its name in JSON and in tables. */
    static String key(Place place) {
        return place.name().toLowerCase(Locale.ROOT);
    }

    /** Its name for people. */
    String word(Place place) {
        if (request.logged()) {
            return "part";
        }
        if (!rod()) {
            return key(place);
        }
        return switch (place) {
            case EDGE -> "working end";
            case CORE -> "far end";
            default -> "thickest piece";
        };
    }

    private boolean rod() {
        return run.grid().kind() == SectionGrid.Kind.ROD;
    }
}
