package org.strawblue.app.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.strawblue.core.colour.Illuminant;
import org.strawblue.core.colour.Light;
import org.strawblue.core.colour.Planck;
import org.strawblue.core.history.Trace;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.oxide.FilmColours;
import org.strawblue.core.oxide.FilmGrowth;
import org.strawblue.core.oxide.FilmPalette;
import org.strawblue.core.oxide.GrowthLaw;
import org.strawblue.core.oxide.GrowthLaws;
import org.strawblue.core.oxide.Index;
import org.strawblue.core.oxide.OpticalConstants;
import org.strawblue.core.oxide.TemperFilm;
import org.strawblue.core.oxide.ThinFilm;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;

/** Film colours: lights and the eye, thin-film optics, growth, names. */
final class ColourOperations {

    private static final FilmColours COLOURS = FilmColours.standard();

    private ColourOperations() {}

    static Map<String, Operation> all() {
        Map<String, Operation> all = new HashMap<>();
        all.put("white-x", in -> Result.number(Illuminant.of(light(in)).white().chromaticityX()));
        all.put("white-y", in -> Result.number(Illuminant.of(light(in)).white().chromaticityY()));
        all.put(
                "planck-x",
                in -> Result.number(Planck.light(in.temperature("temperature")).chromaticityX()));
        all.put(
                "planck-y",
                in -> Result.number(Planck.light(in.temperature("temperature")).chromaticityY()));
        all.put(
                "planck-luminance",
                in -> Result.number(Planck.light(in.temperature("temperature")).y()));
        all.put("surface-reflectance", ColourOperations::surface);
        all.put("coated-reflectance", ColourOperations::coated);
        all.put("iron-reflectance", in -> Result.number(metal(OpticalConstants.iron(), in)));
        all.put("magnetite-reflectance", in -> Result.number(metal(OpticalConstants.magnetite(), in)));
        all.put(
                "magnetite-reflectance-published-k",
                in -> Result.number(metal(OpticalConstants.magnetiteQuerry(), in)));
        all.put("film-thickness", in -> Result.of(Quantity.length(thickness(in, GrowthLaws.central()))));
        all.put("film-colour", in -> Result.word(name(in, GrowthLaws.central())));
        all.put("film-colour-logarithmic", in -> Result.word(name(in, GrowthLaws.of("logarithmic"))));
        all.put("film-colour-parabolic", in -> Result.word(name(in, GrowthLaws.of("parabolic"))));
        all.put("film-colour-hematite-only", ColourOperations::hematiteOnly);
        all.put("film-temperature", ColourOperations::temperature);
        all.put("film-temperature-chart-only", ColourOperations::chartTemperature);
        all.put("quarter-wave-thickness", ColourOperations::quarterWave);
        return all;
    }

    private static Light light(Inputs in) {
        return Light.find(in.optionalText("light").orElse(Light.DAYLIGHT.word()))
                .orElseThrow(() -> new IllegalArgumentException("no such light"));
    }

    private static ColourName colour(Inputs in) {
        return ColourName.find(in.text("colour")).orElseThrow(() -> new IllegalArgumentException("no such colour"));
    }

    private static Result surface(Inputs in) {
        return Result.number(
                ThinFilm.reflectance(1, Index.clear(in.number("index")), List.of(), in.si("angle", Dimension.ANGLE)));
    }

    /** A quarter wave of one clear material on another. */
    private static Result coated(Inputs in) {
        double index = in.number("coating");
        ThinFilm.Layer layer = new ThinFilm.Layer(Index.clear(index), 1 / (4 * index));
        return Result.number(ThinFilm.reflectance(1, Index.clear(in.number("index")), List.of(layer), 0));
    }

    private static double metal(OpticalConstants material, Inputs in) {
        double wavelength = in.length("wavelength");
        return ThinFilm.reflectance(wavelength, material.index(wavelength), List.of(), 0);
    }

    private static double thickness(Inputs in, GrowthLaw law) {
        Trace trace = Trace.hold(in.temperature("temperature"), in.time("time"));
        return FilmGrowth.thickness(trace, law, FilmGrowth.airFormed());
    }

    private static String name(Inputs in, GrowthLaw law) {
        return COLOURS.colour(thickness(in, law), light(in)).name().word();
    }

    private static Result temperature(Inputs in) {
        return Result.of(COLOURS.temperatureFor(colour(in), in.time("time"), light(in), 0));
    }

    /** Control: reads the usual chart whatever the time was. */
    private static Result chartTemperature(Inputs in) {
        return Result.of(COLOURS.temperatureFor(colour(in), COLOURS.chartSeconds(), light(in), 0));
    }

    /** Control: a film of hematite alone. */
    private static Result hematiteOnly(Inputs in) {
        OpticalConstants hematite = OpticalConstants.hematite();
        TemperFilm film = new TemperFilm(OpticalConstants.iron(), hematite, hematite, 1);
        return Result.word(new FilmPalette(film, light(in))
                .colour(in.length("thickness"))
                .name()
                .word());
    }

    /** Control: λ/4n for the colour that is missing, as if the metal turned no phase. */
    private static Result quarterWave(Inputs in) {
        double wavelength = in.length("wavelength");
        double index = OpticalConstants.magnetite().index(wavelength).n();
        return Result.of(Quantity.length(wavelength / (4 * index)));
    }
}
