package org.strawblue.core.oxide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.history.Trace;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/**
 * From a heat to the colour it leaves on clean, bright, plain carbon or low-alloy steel in air, and back.
 *
 * <p>Range: peak 150 to 450 °C, 5 s to 10 days, up to 6 % Cr. One standard deviation of temperature, colour and time
 * known: 13 K at 2 to 30 min, 15 K at 1 to 4 h, 20 K and more beyond. Oil, salt, finger marks and scale spoil it.
 */
public final class FilmColours {

    private final GrowthLaw law = GrowthLaws.central();
    private final double bare = FilmGrowth.airFormed();
    private final FilmPalette.Spectra spectra = new FilmPalette.Spectra(TemperFilm.standard());
    private final Map<Light, FilmPalette> palettes = new EnumMap<>(Light.class);
    private final Map<Light, NamedBands> bands = new EnumMap<>(Light.class);

    private FilmColours() {}

    public static FilmColours standard() {
        return Holder.STANDARD;
    }

    /** The exposure of the trade's usual chart [s], as fitted: what to take where no time is given. */
    public double chartSeconds() {
        return Film.ALL.si("chart_exposure", Dimension.TIME);
    }

    /** The colour of a film of a thickness [m]. */
    public FilmColour colour(double thickness, Light light) {
        return palette(light).colour(thickness);
    }

    /**
     * The colour a heat leaves, with the interval of its thickness and what rival laws say.
     *
     * @param chromium of the steel [mass %]; beyond 1.5 the interval widens, beyond 6 there is no answer
     */
    public Answer<ColourReading> after(Trace trace, Light light, double chromium) {
        List<Finding> stops = Limits.check(trace.peak(), trace.duration(), chromium);
        if (!stops.isEmpty()) {
            return Answer.refused(stops);
        }
        ChromiumEffect effect = new ChromiumEffect(chromium);
        Heat heat = Heat.of(trace, law, effect);
        List<Finding> findings = new ArrayList<>(effect.findings());
        heat.againstTheChart(law, chartSeconds()).ifPresent(findings::add);
        return Answer.of(reading(heat, rival -> Heat.of(trace, rival, effect), effect, light), findings);
    }

    /** The film along a history, to be asked for its colour at any moment of it; limits as for {@link #after}. */
    public Answer<FilmRun> along(Trace trace, Light light, double chromium) {
        List<Finding> stops = Limits.check(Limits.TIME.range().middle(), chromium);
        ChromiumEffect effect = new ChromiumEffect(chromium);
        return stops.isEmpty()
                ? Answer.of(new FilmRun(this, trace, light, effect), effect.findings())
                : Answer.refused(stops);
    }

    GrowthLaw law() {
        return law;
    }

    ColourReading reading(Heat heat, Function<GrowthLaw, Heat> byRival, ChromiumEffect effect, Light light) {
        double half = Normal.HALF_OF_80 * heat.sd();
        Estimate thickness = Estimate.of(
                Dimension.LENGTH,
                heat.thickness(law, bare, 0),
                heat.thickness(law, bare, -half),
                heat.thickness(law, bare, half),
                bases(effect));
        FilmPalette palette = palette(light);
        List<ColourReading.Rival> rivals = GrowthLaws.rivals().stream()
                .map(rival -> new ColourReading.Rival(
                        rival.name(), palette.colour(byRival.apply(rival).thickness(rival, bare, 0))))
                .toList();
        return new ColourReading(
                light,
                palette.colour(thickness.value()),
                thickness,
                palette.colour(thickness.low()),
                palette.colour(thickness.high()),
                rivals);
    }

    /** The temperature [K] at which a steel shows a colour after a time [s] there. */
    public Answer<Estimate> temperatureFor(ColourName name, double seconds, Light light, double chromium) {
        List<Finding> stops = Limits.check(seconds, chromium);
        if (!stops.isEmpty()) {
            return Answer.refused(stops);
        }
        Inverse inverse = new Inverse(law, bare, seconds, new ChromiumEffect(chromium));
        if (name == ColourName.BRIGHT || name == ColourName.GREY) {
            return Answer.refused(inverse.oneSided(name, band(name, light)));
        }
        return inverse.of(band(name, light), bases(new ChromiumEffect(chromium)));
    }

    /** The same by each rival growth law, its middle alone, for names with two edges. */
    public Map<String, Double> rivalTemperatures(ColourName name, double seconds, Light light, double chromium) {
        Map<String, Double> temperatures = new HashMap<>();
        for (GrowthLaw rival : GrowthLaws.rivals()) {
            new Inverse(rival, bare, seconds, new ChromiumEffect(chromium))
                    .of(band(name, light), List.of())
                    .value()
                    .ifPresent(e -> temperatures.put(rival.name(), e.value()));
        }
        return temperatures;
    }

    /** The temperature [K] at which a film reaches a thickness [m] in a time [s]. */
    public Answer<Estimate> temperatureFor(double thickness, double seconds, double chromium) {
        List<Finding> stops = Limits.check(seconds, chromium);
        if (!stops.isEmpty()) {
            return Answer.refused(stops);
        }
        ChromiumEffect effect = new ChromiumEffect(chromium);
        return new Inverse(law, bare, seconds, effect)
                .of(new Band(Dimension.LENGTH, thickness, thickness), bases(effect));
    }

    /** The thicknesses [m] at which a film bears a name in a light. */
    public Band band(ColourName name, Light light) {
        return bands(light)
                .of(name)
                .orElseThrow(() -> new IllegalStateException(name.word() + " does not come in " + light.word()));
    }

    /** The colours of plain carbon steel at {@code n} evenly spaced temperatures [K], after a time [s] at each. */
    public List<RibbonColour> ribbon(double seconds, Light light, double fromKelvin, double toKelvin, int n) {
        return IntStream.range(0, n)
                .mapToDouble(i -> fromKelvin + (toKelvin - fromKelvin) * i / (n - 1))
                .mapToObj(kelvin -> new RibbonColour(
                        kelvin, colour(FilmGrowth.thickness(Trace.hold(kelvin, seconds), law, bare), light)))
                .toList();
    }

    /** Where the same colour comes after other times: the chart is right for its own time only. */
    public List<SameColour> sameColour(ColourName name, Light light, double... seconds) {
        return Arrays.stream(seconds)
                .mapToObj(s -> new SameColour(s, temperatureFor(name, s, light, 0)))
                .toList();
    }

    /** The temperature of a colour after one time [s]. */
    public record SameColour(double seconds, Answer<Estimate> temperature) {}

    private Collection<Basis> bases(ChromiumEffect effect) {
        SortedSet<Basis> bases = new TreeSet<>(effect.bases());
        bases.add(law.basis());
        bases.add(Uncertainty.basis());
        bases.add(Film.ALL.basis("absorption of the film", "magnetite_k"));
        return bases;
    }

    private synchronized FilmPalette palette(Light light) {
        return palettes.computeIfAbsent(light, l -> new FilmPalette(spectra, l));
    }

    private synchronized NamedBands bands(Light light) {
        return bands.computeIfAbsent(light, l -> new NamedBands(palette(l)));
    }

    private static final class Holder {
        static final FilmColours STANDARD = new FilmColours();
    }
}
