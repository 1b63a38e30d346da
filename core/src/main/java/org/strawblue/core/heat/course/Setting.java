package org.strawblue.core.heat.course;

import org.strawblue.core.history.Trace;
import org.strawblue.core.steel.Film;

/** Where a part is and what surrounds it there. Temperatures [K], lengths [m], film coefficients [W/(m²·K)], shares [1]. */
public sealed interface Setting {

    /** Emissivity of the part [1]; 0 where none counts. */
    double emissivity();

    /**
     * On a plate: a bar along a line, a flat on its broad side.
     *
     * @param plate the plate under the part, by time from the start of the spell
     * @param gap air between part and plate where they are nearest
     * @param roomShare share of the plate's heat above the room that the air over it has
     * @param filmFactor true over reckoned film of the air
     * @param covered whether a blanket or lid lies over part and plate
     */
    record OnPlate(
            Trace plate,
            double gap,
            double emissivity,
            double roomShare,
            double filmFactor,
            double room,
            boolean covered)
            implements Setting {
        public OnPlate {
            positive(gap, filmFactor, room);
        }

        /** On a plate that holds its temperature. */
        public static OnPlate steady(double plate, double gap, double emissivity, double roomShare, double room) {
            return new OnPlate(Trace.hold(plate, 1), gap, emissivity, roomShare, 1, room, false);
        }

        public OnPlate withCover() {
            return new OnPlate(plate, gap, emissivity, roomShare, filmFactor, room, true);
        }
    }

    /**
     * In an oven, kiln or muffle whose air and walls are at one temperature: mean + swing sin 2π(t/period + phase).
     *
     * @param period [s]
     */
    record InOven(double mean, double swing, double period, double phase, double film, double emissivity)
            implements Setting {
        public InOven {
            positive(mean, period, film);
        }

        public static InOven steady(double mean, double film, double emissivity) {
            return new InOven(mean, 0, 1, 0, film, emissivity);
        }
    }

    /** In an oven whose temperature was logged, by time from the start of the spell. */
    record InLoggedOven(Trace log, double film, double emissivity) implements Setting {
        public InLoggedOven {
            positive(film);
        }
    }

    /** The part itself was logged, by time from the start of the spell. */
    record AsLogged(Trace log) implements Setting {
        @Override
        public double emissivity() {
            return 0;
        }
    }

    /** In a flame that laps all of it, in sight of the room. */
    record InFlame(double gas, double film, double emissivity, double room) implements Setting {
        public InFlame {
            positive(gas, film, room);
        }
    }

    /** In a bath, or between plates: film by surface temperature, times a strength. */
    record InBath(Film film, double strength, double bath) implements Setting {
        public InBath {
            positive(strength, bath);
        }

        @Override
        public double emissivity() {
            return 0;
        }
    }

    /** In sand or chips of one temperature. */
    record InSand(double sand, double film) implements Setting {
        public InSand {
            positive(sand, film);
        }

        @Override
        public double emissivity() {
            return 0;
        }
    }

    /**
     * On a plate that is not master of its temperature: the part cools it, and its heater makes good what it has lost.
     *
     * @param capacity heat capacity of the plate under and about the part [J/K]
     * @param recovery heat the plate is given for each kelvin it stands below its own temperature [W/K]
     */
    record OnSaggingPlate(OnPlate on, double capacity, double recovery) implements Setting {
        public OnSaggingPlate {
            positive(capacity, recovery);
        }

        @Override
        public double emissivity() {
            return on.emissivity();
        }
    }

    /**
     * One stretch of the part in one setting, the rest in another: a flame on the end, a dip.
     *
     * @param from where the stretch begins, from the part's working end [m]
     * @param to where it ends [m]
     */
    record Partly(Setting there, double from, double to, Setting elsewhere) implements Setting {
        public Partly {
            positive(to);
            if (!(from >= 0 && from < to) || there instanceof Partly || elsewhere instanceof Partly) {
                throw new IllegalArgumentException(
                        "a stretch runs from " + from + " to " + to + " in one simple setting");
            }
        }

        @Override
        public double emissivity() {
            return there.emissivity();
        }
    }

    /** In still air, in sight of the room. */
    record InAir(double room, double emissivity, double filmFactor) implements Setting {
        public InAir {
            positive(room, filmFactor);
        }
    }

    private static void positive(double... figures) {
        for (double figure : figures) {
            if (!(figure > 0) || Double.isInfinite(figure)) {
                throw new IllegalArgumentException("a setting's figure must be greater than 0, not " + figure);
            }
        }
    }
}
