package org.strawblue.core.heat.conduction;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Trace;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** Whether a course lies within what the model is good for. */
final class CourseLimits {

    private static final double THINNEST = length("least-section");
    private static final double THICKEST = length("largest-section");
    private static final double COLDEST = kelvin("coldest");
    private static final double HOTTEST = kelvin("hottest");
    private static final double HOTTEST_FLAME = kelvin("hottest-flame");
    private static final double LONGEST = Figures.OWN.si("longest", Dimension.TIME);

    private final List<Finding> stops = new ArrayList<>();

    private CourseLimits() {}

    static List<Finding> stops(Course course) {
        CourseLimits limits = new CourseLimits();
        limits.shape(course.shape());
        limits.temperature("The part's first temperature", course.start(), HOTTEST);
        course.spells().stream().map(Spell::setting).forEach(limits::setting);
        if (course.spells().size() > 1) {
            course.spells().stream()
                    .map(Spell::setting)
                    .filter(CourseLimits::logged)
                    .forEach(x -> limits.logAmongOthers());
        }
        if (course.duration() > LONGEST) {
            limits.stop(
                    "The course lasts {}.", Quantity.time(course.duration()), Quantity.time(0), Quantity.time(LONGEST));
        }
        return limits.stops;
    }

    private void shape(PartShape shape) {
        double section = shape instanceof PartShape.Tube tube ? tube.outside() : shape.section();
        double thinnest = shape instanceof PartShape.SteppedPin pin
                ? pin.pieces().stream()
                        .mapToDouble(PartShape.SteppedPin.Piece::diameter)
                        .min()
                        .orElseThrow()
                : shape.section();
        if (section > THICKEST || thinnest < THINNEST) {
            stop(
                    "The section is {}.",
                    Quantity.length(section > THICKEST ? section : thinnest),
                    Quantity.length(THINNEST),
                    Quantity.length(THICKEST));
        }
    }

    private void setting(Setting setting) {
        if (setting instanceof Setting.OnSaggingPlate sagging) {
            setting(sagging.on());
        } else if (setting instanceof Setting.Partly partly) {
            if (alone(partly.there()) || alone(partly.elsewhere())) {
                notPartly();
            }
            setting(partly.there());
            setting(partly.elsewhere());
        } else if (setting instanceof Setting.OnPlate plate) {
            log("The plate", plate.plate());
            temperature("The room", plate.room(), HOTTEST);
        } else if (setting instanceof Setting.InOven oven) {
            temperature("The oven's hottest", oven.mean() + Math.abs(oven.swing()), HOTTEST);
            temperature("The oven's coldest", oven.mean() - Math.abs(oven.swing()), HOTTEST);
        } else if (setting instanceof Setting.InLoggedOven oven) {
            log("The log", oven.log());
        } else if (setting instanceof Setting.AsLogged logged) {
            log("The log", logged.log());
        } else if (setting instanceof Setting.InFlame flame) {
            temperature("The flame", flame.gas(), HOTTEST_FLAME);
            temperature("The room", flame.room(), HOTTEST);
        } else if (setting instanceof Setting.InBath bath) {
            temperature("The bath", bath.bath(), HOTTEST);
        } else if (setting instanceof Setting.InSand sand) {
            temperature("The sand", sand.sand(), HOTTEST);
        } else if (setting instanceof Setting.InAir air) {
            temperature("The room", air.room(), HOTTEST);
        }
    }

    private static boolean logged(Setting setting) {
        return setting instanceof Setting.AsLogged;
    }

    /** What a stretch of a part cannot be in by itself. */
    private static boolean alone(Setting setting) {
        return logged(setting) || setting instanceof Setting.OnPlate || setting instanceof Setting.OnSaggingPlate;
    }

    private void notPartly() {
        add(new Finding.Stop(
                Phrase.of("One stretch of the part lies on a plate, or was logged, and the rest does not."),
                Phrase.of(
                        "A stretch may be in a flame, bath, oven, sand or air; on a plate only a whole part is reckoned."),
                Phrase.of("Ask about the whole part on the plate.")));
    }

    private void logAmongOthers() {
        add(new Finding.Stop(
                Phrase.of("A log of the part itself is one of several spells."),
                Phrase.of(
                        "It tells one place's temperature, not what surrounds the part, so nothing can follow from it."),
                Phrase.of("Give the log alone, over the whole heat; or log the oven and give its film.")));
    }

    private void add(Finding stop) {
        if (!stops.contains(stop)) {
            stops.add(stop);
        }
    }

    private void log(String what, Trace log) {
        double coldest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < log.size(); i++) {
            coldest = Math.min(coldest, log.kelvin(i));
        }
        temperature(what, log.peak(), HOTTEST);
        temperature(what, coldest, HOTTEST);
    }

    private void temperature(String what, double kelvin, double hottest) {
        if (!(kelvin >= COLDEST && kelvin <= hottest)) {
            stop(
                    what + " is at {}.",
                    Quantity.temperature(kelvin),
                    Quantity.temperature(COLDEST),
                    Quantity.temperature(hottest));
        }
    }

    private void stop(String what, Quantity value, Quantity low, Quantity high) {
        add(new Finding.Stop(
                Phrase.of(what, value),
                Phrase.of("The reckoning of heat in steel is good from {} to {} here.", low, high),
                Phrase.of("Ask about something within these limits.")));
    }

    private static double length(String key) {
        return Figures.OWN.si(key, Dimension.LENGTH);
    }

    private static double kelvin(String key) {
        return Figures.OWN.si(key, Dimension.TEMPERATURE);
    }
}
