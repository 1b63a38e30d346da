package org.strawblue.app.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.heat.conduction.Conduction;
import org.strawblue.core.heat.conduction.Fineness;
import org.strawblue.core.heat.course.Air;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.ThermalHistory;
import org.strawblue.core.history.Trace;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Film;
import org.strawblue.core.steel.Quenchants;

/**
 * Conduction against series and closed forms, on so small a step in temperature that properties are constant, and against what
 * general-purpose solvers made of whole courses.
 */
final class HeatOperations {

    private static final double FROM = 300;
    private static final double TO = 302;
    private static final double MIDDLE = (FROM + TO) / 2;
    private static final double K = SteelProperties.conductivity(MIDDLE);
    private static final double PER_VOLUME = SteelProperties.DENSITY * SteelProperties.specificHeat(MIDDLE);
    private static final double HALF = 0.01;
    private static final double TOLERANCE = 1e-4;
    private static final double NONE = 1e-9;
    private static final double LONG = 1e6;
    private static final int CYCLES = 12;

    private HeatOperations() {}

    static Map<String, Operation> all() {
        Map<String, Operation> all = new HashMap<>();
        all.put("heat-left", in -> Result.number(left(in, in.text("place"))));
        all.put("heat-left-at-skin", in -> Result.number(left(in, "underside")));
        all.put("heat-left-lumped", in -> Result.number(lumped(in)));
        all.put("heat-skin-of-thick-bar", in -> Result.number(thickSkin(in.number("x"))));
        all.put("heat-left-over-gap", in -> Result.number(overGap(in)));
        all.put("heat-by-radiation", in -> temperature(byRadiation(in)));
        all.put("heat-ripple", in -> Result.number(ripple(in.number("cycle"))));
        all.put("heat-on-plate", in -> at(in, course(in, bar(in), plate(in))));
        all.put("heat-on-plate-uncovered", in -> at(in, course(in, bar(in), bare(in))));
        all.put("heat-on-plate-as-square", in -> at(in, course(in, square(in), plate(in))));
        all.put("heat-in-oven", in -> at(in, course(in, bar(in), oven(in))));
        all.put("heat-in-bath", in -> at(in, course(in, bar(in), bath(in))));
        all.put("heat-film-of-source", in -> Result.number(film(in)));
        return all;
    }

    /** In steps as small against the step in temperature as the program's own are against a heat of 200 K. */
    private static ThermalHistory run(
            PartShape shape, double start, Setting setting, double seconds, Fineness fineness) {
        Course course = new Course(shape, start, List.of(new Spell(setting, seconds)));
        return Conduction.run(course, fineness, TOLERANCE).value().orElseThrow().history();
    }

    private static Setting evenBath(double film) {
        return new Setting.InBath(new Film(new double[] {200, 1500}, new double[] {film, film}), 1, TO);
    }

    /** Share of the step still to go, after a Fourier number on radius or half thickness. */
    private static double left(Inputs in, String place) {
        boolean round = in.text("shape").equals("round");
        PartShape shape = round ? new PartShape.RoundBar(2 * HALF, LONG) : new PartShape.Flat(2 * HALF, 1, LONG);
        double seconds = in.number("fourier") * HALF * HALF * PER_VOLUME / K;
        ThermalHistory history = run(shape, FROM, evenBath(in.number("biot") * K / HALF), seconds, Fineness.USUAL);
        return (TO - trace(history, place).at(seconds)) / (TO - FROM);
    }

    /** Control: the inside taken to keep pace. */
    private static double lumped(Inputs in) {
        double perHalf = in.text("shape").equals("round") ? 2 : 1;
        return Math.exp(-perHalf * in.number("biot") * in.number("fourier"));
    }

    /** Rise of the skin of a thick bar over that of its surroundings, x = h √(α t)/k. */
    private static double thickSkin(double x) {
        double film = 40000;
        double seconds = x * x * K * PER_VOLUME / (film * film);
        ThermalHistory history =
                run(new PartShape.RoundBar(9 * HALF, LONG), FROM, evenBath(film), seconds, Fineness.USUAL.times(8));
        return (trace(history, "surface").at(seconds) - FROM) / (TO - FROM);
    }

    /** Share of the step left after one time constant ρ c A/(k S) of a thin bar over a plate, S the shape factor given. */
    private static double overGap(Inputs in) {
        double radius = HALF / 10;
        double gap = (in.number("height") - 1) * radius;
        Setting plate = new Setting.OnPlate(Trace.hold(TO, 1), gap, NONE, 0, NONE, FROM, false);
        double conductance = in.number("factor") * Air.conductivity(MIDDLE);
        double seconds = PER_VOLUME * Math.PI * radius * radius / conductance;
        ThermalHistory history = run(new PartShape.RoundBar(2 * radius, LONG), FROM, plate, seconds, Fineness.USUAL);
        return (TO - trace(history, "core").at(seconds)) / (TO - FROM);
    }

    private static double byRadiation(Inputs in) {
        Setting walls = Setting.InOven.steady(in.temperature("walls"), NONE, 1);
        double seconds = in.time("time");
        PartShape bar = new PartShape.RoundBar(in.length("diameter"), LONG);
        return trace(run(bar, in.temperature("start"), walls, seconds, Fineness.USUAL), "core")
                .at(seconds);
    }

    /** A part's swing over its oven's, cycle over time constant given. */
    private static double ripple(double cycle) {
        double film = 20;
        double constant = PER_VOLUME * HALF / 20 / film;
        double period = cycle * constant;
        double end = CYCLES * Math.ceil(1 / cycle) * period;
        Setting oven = new Setting.InOven(MIDDLE, 1, period, 0, film, 0);
        Trace trace = trace(run(new PartShape.RoundBar(HALF / 5, LONG), MIDDLE, oven, end, Fineness.USUAL), "core");
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= 1000; i++) {
            double now = trace.at(end - period * i / 1000);
            low = Math.min(low, now);
            high = Math.max(high, now);
        }
        return (high - low) / 2;
    }

    private static PartShape bar(Inputs in) {
        return in.has("thickness")
                ? new PartShape.Flat(in.length("thickness"), in.length("width"), in.length("length"))
                : new PartShape.RoundBar(in.length("diameter"), in.length("length"));
    }

    /** Control: a square bar of the same section lies on its side, not on a line. */
    private static PartShape square(Inputs in) {
        return new PartShape.SquareBar(in.length("diameter") * Math.sqrt(Math.PI) / 2, in.length("length"));
    }

    private static Setting plate(Inputs in) {
        return in.optionalText("cover").isPresent() ? bare(in).withCover() : bare(in);
    }

    /** Control where there is a cover. */
    private static Setting.OnPlate bare(Inputs in) {
        return Setting.OnPlate.steady(
                in.temperature("plate"),
                in.length("gap"),
                in.number("emissivity"),
                in.number("share"),
                in.temperature("room"));
    }

    private static Setting oven(Inputs in) {
        return Setting.InOven.steady(in.temperature("oven"), in.number("film"), in.number("emissivity"));
    }

    private static Setting bath(Inputs in) {
        return new Setting.InBath(Quenchants.of(in.text("bath")).film(), 1, in.temperature("temperature"));
    }

    private static Course course(Inputs in, PartShape shape, Setting setting) {
        return new Course(shape, in.temperature("start"), List.of(new Spell(setting, in.time("time"))));
    }

    private static Result at(Inputs in, Course course) {
        ThermalHistory history = Conduction.run(course).value().orElseThrow().history();
        return temperature(trace(history, in.text("place")).at(in.time("time")));
    }

    /** Film of convection and radiation together [W/(m²·K)] of a part in a source of the shop. */
    private static double film(Inputs in) {
        HeatSource source = HeatSources.of(in.text("source"));
        double one = in.temperature("part");
        double other = in.temperature("walls");
        double radiation = SteelProperties.STEFAN_BOLTZMANN * (one * one + other * other) * (one + other);
        return source.traits().film().value() + in.number("emissivity") * radiation;
    }

    private static Trace trace(ThermalHistory history, String place) {
        return history.at(Place.valueOf(place.toUpperCase(Locale.ROOT))).orElseThrow();
    }

    private static Result temperature(double kelvin) {
        return Result.of(new Quantity(Dimension.TEMPERATURE, kelvin));
    }
}
