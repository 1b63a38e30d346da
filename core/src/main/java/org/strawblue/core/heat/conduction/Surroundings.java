package org.strawblue.core.heat.conduction;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.strawblue.core.heat.course.Air;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.history.Trace;

/**
 * A setting as the solver meets it.
 *
 * @param on the plate the part lies on
 * @param capacity of a plate that sags [J/K], 0 for one that does not
 * @param recovery of such a plate [W/K]
 * @param zones one for the whole part, or two: for the stretch, and for the rest
 * @param from the stretch [m]
 * @param to its end [m]
 * @param last temperature of what surrounds the part when the spell ends [K]
 * @param longestStep a step over which what surrounds the part does not turn about unseen [s]
 */
record Surroundings(
        Optional<Setting.OnPlate> on,
        double capacity,
        double recovery,
        List<Zone> zones,
        double from,
        double to,
        double last,
        double longestStep) {

    private static final double SHARE = Figures.SHARED.number("cavity-share");
    private static final double LAG = Figures.SHARED.si("cavity-time", org.strawblue.core.quantity.Dimension.TIME);
    private static final double PLATE_EMISSIVITY = Figures.SHARED.number("plate-emissivity");

    /** @param size the size the free film of the air goes by, diameter or thickness [m] */
    static Surroundings of(Setting setting, double size, double seconds) {
        if (setting instanceof Setting.OnSaggingPlate sagging) {
            Surroundings firm = of(sagging.on(), size, seconds);
            return new Surroundings(
                    firm.on,
                    sagging.capacity(),
                    sagging.recovery(),
                    firm.zones,
                    0,
                    firm.to,
                    firm.last,
                    firm.longestStep);
        }
        if (setting instanceof Setting.OnPlate plate) {
            double last = plate.plate().at(seconds);
            return new Surroundings(
                    Optional.of(plate),
                    0,
                    0,
                    List.of(over(plate, size)),
                    0,
                    Double.POSITIVE_INFINITY,
                    last,
                    step(setting, seconds));
        }
        if (setting instanceof Setting.Partly partly) {
            Zone there = zone(partly.there(), size);
            Zone elsewhere = zone(partly.elsewhere(), size);
            double last = elsewhere.gas().applyAsDouble(seconds);
            return new Surroundings(
                    Optional.empty(),
                    0,
                    0,
                    List.of(there, elsewhere),
                    partly.from(),
                    partly.to(),
                    last,
                    step(setting, seconds));
        }
        Zone zone = zone(setting, size);
        return new Surroundings(
                Optional.empty(),
                0,
                0,
                List.of(zone),
                0,
                Double.POSITIVE_INFINITY,
                zone.gas().applyAsDouble(seconds),
                step(setting, seconds));
    }

    boolean steady() {
        return zones.stream().allMatch(Zone::steady)
                && on.map(p -> constant(p.plate())).orElse(true);
    }

    boolean sags() {
        return capacity > 0;
    }

    /** The plate with nothing on it [K]. */
    double plate(double seconds) {
        return on.map(p -> p.plate().at(seconds)).orElse(0.0);
    }

    /** Exchange of heat by radiation between plate and part: both are grey and face each other. */
    double plateExchange() {
        return on.map(p -> 1 / (1 / Math.max(p.emissivity(), 1e-6) + 1 / PLATE_EMISSIVITY - 1))
                .orElse(0.0);
    }

    private static double step(Setting setting, double seconds) {
        if (setting instanceof Setting.InOven oven && oven.swing() != 0) {
            return oven.period() / 12;
        }
        if (setting instanceof Setting.InLoggedOven oven) {
            return Math.max(seconds / 2000, seconds / oven.log().size());
        }
        if (setting instanceof Setting.OnPlate plate && !constant(plate.plate())) {
            return Math.max(seconds / 2000, seconds / plate.plate().size());
        }
        return Double.POSITIVE_INFINITY;
    }

    private static Zone zone(Setting setting, double size) {
        if (setting instanceof Setting.InOven oven) {
            DoubleUnaryOperator heat =
                    t -> oven.mean() + oven.swing() * Math.sin(2 * Math.PI * (t / oven.period() + oven.phase()));
            return new Zone(heat, heat, FilmTable.constant(oven.film()), oven.emissivity(), oven.swing() == 0);
        }
        if (setting instanceof Setting.InLoggedOven oven) {
            DoubleUnaryOperator heat = t -> oven.log().at(t);
            return new Zone(heat, heat, FilmTable.constant(oven.film()), oven.emissivity(), false);
        }
        if (setting instanceof Setting.InFlame flame) {
            return Zone.steady(flame.gas(), flame.room(), FilmTable.constant(flame.film()), flame.emissivity());
        }
        if (setting instanceof Setting.InBath bath) {
            FilmTable film = new FilmTable(t -> bath.strength() * bath.film().at(t));
            return Zone.steady(bath.bath(), bath.bath(), film, 0);
        }
        if (setting instanceof Setting.InSand sand) {
            return Zone.steady(sand.sand(), sand.sand(), FilmTable.constant(sand.film()), 0);
        }
        if (setting instanceof Setting.InAir air) {
            FilmTable film = new FilmTable(t -> air.filmFactor() * Air.aboutBar(size, t, air.room()));
            return Zone.steady(air.room(), air.room(), film, air.emissivity());
        }
        throw new IllegalArgumentException("no part of a course of its own: " + setting);
    }

    /** Air and room over a plate, or a cover that warms towards the plate's heat. */
    private static Zone over(Setting.OnPlate plate, double size) {
        double first = plate.plate().at(0);
        if (plate.covered()) {
            DoubleUnaryOperator tent = t -> plate.room()
                    + SHARE * (1 - Math.exp(-t / LAG)) * (plate.plate().at(t) - plate.room());
            double middle = plate.room() + SHARE * (first - plate.room());
            FilmTable film = new FilmTable(t -> plate.filmFactor() * Air.aboutBar(size, t, middle));
            return new Zone(tent, tent, film, plate.emissivity(), false);
        }
        DoubleUnaryOperator air =
                t -> plate.room() + plate.roomShare() * (plate.plate().at(t) - plate.room());
        double middle = plate.room() + plate.roomShare() * (first - plate.room());
        FilmTable film = new FilmTable(t -> plate.filmFactor() * Air.aboutBar(size, t, middle));
        return new Zone(air, t -> plate.room(), film, plate.emissivity(), constant(plate.plate()));
    }

    private static boolean constant(Trace trace) {
        for (int i = 1; i < trace.size(); i++) {
            if (trace.kelvin(i) != trace.kelvin(0)) {
                return false;
            }
        }
        return true;
    }
}
