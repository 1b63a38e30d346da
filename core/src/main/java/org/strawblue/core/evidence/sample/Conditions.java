package org.strawblue.core.evidence.sample;

import static org.strawblue.core.evidence.sample.Influence.CONTACT_GAP;
import static org.strawblue.core.evidence.sample.Influence.FILM_FACTOR;
import static org.strawblue.core.evidence.sample.Influence.OVEN_OFFSET;
import static org.strawblue.core.evidence.sample.Influence.OVEN_PHASE;
import static org.strawblue.core.evidence.sample.Influence.OVEN_SWING;
import static org.strawblue.core.evidence.sample.Influence.PART_EMISSIVITY;
import static org.strawblue.core.evidence.sample.Influence.PLATE_OFFSET;
import static org.strawblue.core.evidence.sample.Influence.ROOM_SHARE;
import static org.strawblue.core.evidence.sample.Influence.SENSOR_OFFSET;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Trace;

/**
 * A course under one history's influences. What the course states counts as the usual middle: a gap becomes gap × drawn /
 * usual, a temperature moves by what is drawn, a share by its logarithm of odds.
 */
record Conditions(Priors priors, double[] z) {

    private static final Distribution.Kind SHARE = Distribution.Kind.LOGITNORMAL;

    double value(Influence influence) {
        return priors.of(influence).at(z[influence.ordinal()]);
    }

    Course of(Course stated) {
        List<Spell> spells = stated.spells().stream()
                .map(s -> new Spell(of(s.setting()), s.seconds()))
                .toList();
        return new Course(stated.shape(), stated.start(), spells);
    }

    private Setting of(Setting stated) {
        if (stated instanceof Setting.OnPlate s) {
            return on(s);
        }
        if (stated instanceof Setting.OnSaggingPlate s) {
            return new Setting.OnSaggingPlate(on(s.on()), s.capacity(), s.recovery());
        }
        if (stated instanceof Setting.Partly s) {
            return new Setting.Partly(of(s.there()), s.from(), s.to(), of(s.elsewhere()));
        }
        if (stated instanceof Setting.InOven s) {
            return new Setting.InOven(
                    s.mean() + value(OVEN_OFFSET),
                    times(s.swing(), OVEN_SWING),
                    s.period(),
                    value(OVEN_PHASE),
                    times(s.film(), FILM_FACTOR),
                    odds(s.emissivity(), PART_EMISSIVITY));
        }
        if (stated instanceof Setting.InLoggedOven s) {
            return new Setting.InLoggedOven(
                    shifted(s.log(), value(SENSOR_OFFSET)),
                    times(s.film(), FILM_FACTOR),
                    odds(s.emissivity(), PART_EMISSIVITY));
        }
        return stated instanceof Setting.AsLogged s
                ? new Setting.AsLogged(shifted(s.log(), value(SENSOR_OFFSET)))
                : open(stated);
    }

    private Setting.OnPlate on(Setting.OnPlate s) {
        return new Setting.OnPlate(
                shifted(s.plate(), value(PLATE_OFFSET)),
                times(s.gap(), CONTACT_GAP),
                odds(s.emissivity(), PART_EMISSIVITY),
                odds(s.roomShare(), ROOM_SHARE),
                times(s.filmFactor(), FILM_FACTOR),
                s.room(),
                s.covered());
    }

    private Setting open(Setting stated) {
        if (stated instanceof Setting.InFlame s) {
            return new Setting.InFlame(
                    s.gas(), times(s.film(), FILM_FACTOR), odds(s.emissivity(), PART_EMISSIVITY), s.room());
        }
        if (stated instanceof Setting.InBath s) {
            return new Setting.InBath(s.film(), times(s.strength(), FILM_FACTOR), s.bath());
        }
        if (stated instanceof Setting.InSand s) {
            return new Setting.InSand(s.sand() + value(PLATE_OFFSET), times(s.film(), FILM_FACTOR));
        }
        if (stated instanceof Setting.InAir s) {
            return new Setting.InAir(
                    s.room(), odds(s.emissivity(), PART_EMISSIVITY), times(s.filmFactor(), FILM_FACTOR));
        }
        return stated;
    }

    private double times(double stated, Influence influence) {
        return stated * value(influence) / Priors.usual().of(influence).centre();
    }

    private double odds(double stated, Influence influence) {
        double move = SHARE.scaled(value(influence))
                - SHARE.scaled(Priors.usual().of(influence).centre());
        return SHARE.unscaled(SHARE.scaled(stated) + move);
    }

    private static Trace shifted(Trace trace, double kelvin) {
        double[] moved = trace.kelvin();
        for (int i = 0; i < moved.length; i++) {
            moved[i] += kelvin;
        }
        return new Trace(trace.seconds(), moved);
    }

    /** The influences that act on the temperatures of this course. */
    static Set<Influence> acting(Course course) {
        Set<Influence> acting = EnumSet.noneOf(Influence.class);
        course.spells().forEach(s -> acting.addAll(acting(s.setting())));
        return acting;
    }

    private static Set<Influence> acting(Setting setting) {
        if (setting instanceof Setting.Partly s) {
            return acting(s.there());
        }
        if (setting instanceof Setting.OnPlate || setting instanceof Setting.OnSaggingPlate) {
            return EnumSet.of(CONTACT_GAP, PLATE_OFFSET, ROOM_SHARE, PART_EMISSIVITY, FILM_FACTOR);
        }
        if (setting instanceof Setting.InOven) {
            return EnumSet.of(OVEN_OFFSET, OVEN_SWING, OVEN_PHASE, PART_EMISSIVITY, FILM_FACTOR);
        }
        if (setting instanceof Setting.InLoggedOven) {
            return EnumSet.of(SENSOR_OFFSET, PART_EMISSIVITY, FILM_FACTOR);
        }
        if (setting instanceof Setting.AsLogged) {
            return EnumSet.of(SENSOR_OFFSET);
        }
        return setting instanceof Setting.InSand
                ? EnumSet.of(PLATE_OFFSET, FILM_FACTOR)
                : EnumSet.of(PART_EMISSIVITY, FILM_FACTOR);
    }
}
