package org.strawblue.core.watch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.oxide.FilmColours;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;
import org.strawblue.core.steel.HollomonJaffe;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;
import org.strawblue.core.steel.TemperingLaw;

/**
 * The same colour by quick and by slow heating: not the same temperature, and not the same hardness.
 *
 * <p>ΔHRC = HRC(T′, t_slow) − HRC(T_slow, t_slow), T′ the temperature that in the slow time softens as much as the quick heat,
 * T_quick and T_slow the temperatures of the colour's middle. The steel's own scatter is common to both and drops out; the
 * interval is that of the film's growth (its rival laws) and of the exchange of time for temperature.
 *
 * @param quick the quick heat
 * @param slow the slow heat
 * @param harder how much harder the quick one is [HRC], negative where it is softer; absent where no number is given
 */
public record QuickAndSlow(ColourName colour, Heat quick, Heat slow, Optional<Estimate> harder) {

    /** @param kelvin temperature at which the colour comes in this time [K] */
    public record Heat(double seconds, Estimate kelvin, Answer<Estimate> hardness) {}

    /**
     * @param quick time at temperature of the quick heat [s]
     * @param slow time at temperature of the slow one [s]
     * @param chromium of the steel [mass %]
     */
    public static Answer<QuickAndSlow> of(
            Steel steel, ColourName colour, Light light, double chromium, double quick, double slow) {
        FilmColours films = FilmColours.standard();
        return films.temperatureFor(colour, quick, light, chromium)
                .then(hot -> films.temperatureFor(colour, slow, light, chromium)
                        .then(cool -> Tempering.law(steel)
                                .then(law -> compare(
                                        law, colour, light, chromium, heat(law, quick, hot), heat(law, slow, cool)))));
    }

    private static Heat heat(TemperingLaw law, double seconds, Estimate kelvin) {
        return new Heat(seconds, kelvin, law.hardness(new Temper(kelvin.value(), seconds)));
    }

    private static Answer<QuickAndSlow> compare(
            TemperingLaw law, ColourName colour, Light light, double chromium, Heat quick, Heat slow) {
        if (quick.hardness().value().isEmpty() || slow.hardness().value().isEmpty()) {
            QuickAndSlow plain = new QuickAndSlow(colour, quick, slow, Optional.empty());
            List<Finding> why = new ArrayList<>(plain.softened());
            why.add(plain.direction());
            return Answer.of(plain, why);
        }
        Comparison comparison = new Comparison(law, quick.seconds(), slow.seconds());
        Optional<Estimate> harder = comparison.estimate(
                quick.kelvin(),
                slow.kelvin(),
                rivals(colour, quick.seconds(), light, chromium),
                rivals(colour, slow.seconds(), light, chromium));
        return Answer.of(new QuickAndSlow(colour, quick, slow, harder));
    }

    private static Map<String, Double> rivals(ColourName colour, double seconds, Light light, double chromium) {
        return FilmColours.standard().rivalTemperatures(colour, seconds, light, chromium);
    }

    private List<Finding> softened() {
        List<Finding> all = new ArrayList<>();
        for (Heat heat : List.of(quick, slow)) {
            heat.hardness().findings().stream()
                    .filter(Finding.Stop.class::isInstance)
                    .map(f -> new Finding.Caution(f.what(), f.why(), f.remedy()))
                    .forEach(all::add);
        }
        return all;
    }

    private Finding direction() {
        Estimate harder = WatchFigures.quickTestHarder();
        return new Finding.Note(
                Phrase.of(
                        colour.word() + " in {} comes at {}, in {} at {}; no hardness is told of both",
                        Quantity.time(quick.seconds()),
                        Quantity.temperature(quick.kelvin().value()),
                        Quantity.time(slow.seconds()),
                        Quantity.temperature(slow.kelvin().value())),
                Phrase.of(
                        "Pieces tested after {} came out {} harder than any law says.",
                        Quantity.time(WatchFigures.quickTest()),
                        new Band(Dimension.HARDNESS, harder.low(), harder.high())),
                Phrase.of("Take a quickly run colour as harder than the same colour from an oven, and prove it with a"
                        + " file."));
    }

    /** Hardness of the quick heat less that of the slow one. */
    private record Comparison(TemperingLaw law, double quick, double slow) {

        Optional<Estimate> estimate(
                Estimate hot, Estimate cool, Map<String, Double> rivalHot, Map<String, Double> rivalCool) {
            double value = harder(law.exchange(), hot.value(), cool.value());
            List<Double> byFilm = new ArrayList<>();
            rivalHot.forEach((name, kelvin) -> {
                Double other = rivalCool.get(name);
                if (other != null) {
                    byFilm.add(harder(law.exchange(), kelvin, other));
                }
            });
            List<Double> byExchange = new ArrayList<>();
            double spread = Tempering.exchangeSpread();
            for (double c : new double[] {-spread, spread}) {
                byExchange.add(harder(new HollomonJaffe(law.exchange().constant() + c), hot.value(), cool.value()));
            }
            if (Double.isNaN(value)) {
                return Optional.empty();
            }
            SortedSet<Basis> bases = new TreeSet<>(hot.bases());
            bases.addAll(Tempering.exchangeBases());
            double below = Math.hypot(below(value, byFilm), below(value, byExchange));
            double above = Math.hypot(above(value, byFilm), above(value, byExchange));
            return Optional.of(Estimate.of(Dimension.HARDNESS, value, value - below, value + above, bases));
        }

        private double harder(HollomonJaffe exchange, double hot, double cool) {
            double as = exchange.kelvin(exchange.parameter(hot, quick), slow);
            return hardness(as) - hardness(cool);
        }

        private double hardness(double kelvin) {
            return law.hardness(new Temper(kelvin, slow))
                    .value()
                    .map(Estimate::value)
                    .orElse(Double.NaN);
        }

        private static double below(double value, List<Double> others) {
            return others.stream()
                    .filter(o -> o < value)
                    .mapToDouble(o -> value - o)
                    .max()
                    .orElse(0);
        }

        private static double above(double value, List<Double> others) {
            return others.stream()
                    .filter(o -> o > value)
                    .mapToDouble(o -> o - value)
                    .max()
                    .orElse(0);
        }
    }
}
