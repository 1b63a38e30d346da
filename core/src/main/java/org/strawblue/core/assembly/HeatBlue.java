package org.strawblue.core.assembly;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.history.Trace;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.oxide.ColourReading;
import org.strawblue.core.oxide.FilmColour;
import org.strawblue.core.oxide.FilmColours;
import org.strawblue.core.quantity.Dimension;

/**
 * A temper colour as a finish: held at a temperature until it comes, and lifted before it goes.
 *
 * <p>By the film law of {@link FilmColours}: the time at which the film at one temperature is as thick as in the middle of the
 * colour; where the next colour and grey begin; how far two pieces may differ in temperature until they look different side
 * by side.
 *
 * @param seconds at temperature until the colour is at its best [s]
 * @param from it is first to be seen [s]
 * @param until it is last to be seen [s]
 * @param grey where it has gone grey [s]; absent beyond the law's range
 * @param greyKelvin how much hotter it would have gone grey in the same time [K]; absent likewise
 * @param apart how far two pieces may be apart in temperature and look alike [K]
 */
public record HeatBlue(
        ColourName colour,
        FilmColour look,
        double kelvin,
        Estimate seconds,
        double from,
        double until,
        Optional<Estimate> grey,
        Optional<Double> greyKelvin,
        double apart) {

    private static final double SHORTEST = 5;
    private static final double LONGEST = 864000;
    private static final int HALVINGS = 40;
    private static final double MOST_APART = 40;

    /** The time to have a colour come in where none is told [s]: long enough to watch, by {@code practice.csv}. */
    public static double usualSeconds() {
        return Figures.ALL.si("blue_usual", Dimension.TIME);
    }

    /** At one temperature [K]: how long. */
    public static Answer<HeatBlue> at(double kelvin, ColourName colour, Light light, double chromium) {
        FilmColours films = FilmColours.standard();
        Answer<ColourReading> first = films.after(Trace.hold(kelvin, SHORTEST), light, chromium);
        return first.value().isEmpty()
                ? Answer.refused(first.findings())
                : new Search(films, kelvin, light, chromium).blue(colour);
    }

    /** In one time [s]: at what temperature, and the rest as above. */
    public static Answer<HeatBlue> in(double seconds, ColourName colour, Light light, double chromium) {
        return FilmColours.standard()
                .temperatureFor(colour, seconds, light, chromium)
                .then(t -> at(t.value(), colour, light, chromium));
    }

    /** Asks the film law at one temperature. */
    private record Search(FilmColours films, double kelvin, Light light, double chromium) {

        Answer<HeatBlue> blue(ColourName colour) {
            var band = films.band(colour, light);
            double middle = band.middle();
            Optional<Double> best = when(middle, r -> r.thickness().value());
            if (best.isEmpty()) {
                return Answer.refused(BlueFindings.outOfReach(colour, kelvin));
            }
            double seconds = best.get();
            Estimate told = Estimate.of(
                    Dimension.TIME,
                    seconds,
                    Math.min(seconds, when(middle, r -> r.thickness().high()).orElse(SHORTEST)),
                    Math.max(seconds, when(middle, r -> r.thickness().low()).orElse(LONGEST)),
                    reading(kelvin, seconds).thickness().bases());
            double greyFrom = films.band(ColourName.GREY, light).low();
            HeatBlue blue = new HeatBlue(
                    colour,
                    films.colour(middle, light),
                    kelvin,
                    told,
                    when(band.low(), r -> r.thickness().value()).orElse(SHORTEST),
                    when(band.high(), r -> r.thickness().value()).orElse(LONGEST),
                    grey(greyFrom),
                    hotter(greyFrom, seconds),
                    apart(seconds));
            return Answer.of(blue, BlueFindings.with(blue, ofTheSteel(middle, seconds)));
        }

        /** What its chromium does; not how the usual chart would read a colour that is no reading here. */
        private List<Finding> ofTheSteel(double thickness, double seconds) {
            return films.temperatureFor(thickness, seconds, chromium).findings();
        }

        /** When the film is as thick as where grey begins [s]. */
        private Optional<Estimate> grey(double thickness) {
            Optional<Double> late = when(thickness, r -> r.thickness().value());
            Optional<Double> soon = when(thickness, r -> r.thickness().high());
            return late.map(g -> Estimate.of(
                    Dimension.TIME,
                    g,
                    Math.min(g, soon.orElse(SHORTEST)),
                    Math.max(g, when(thickness, r -> r.thickness().low()).orElse(LONGEST)),
                    reading(kelvin, g).thickness().bases()));
        }

        private ColourReading reading(double at, double seconds) {
            return films.after(Trace.hold(at, seconds), light, chromium).value().orElseThrow();
        }

        /** Time [s] at which a part of the reading reaches a thickness [m], within the law's range. */
        private Optional<Double> when(double thickness, ToDoubleFunction<ColourReading> part) {
            if (part.applyAsDouble(reading(kelvin, LONGEST)) < thickness
                    || part.applyAsDouble(reading(kelvin, SHORTEST)) > thickness) {
                return Optional.empty();
            }
            double low = Math.log(SHORTEST);
            double high = Math.log(LONGEST);
            for (int i = 0; i < HALVINGS; i++) {
                double middle = (low + high) / 2;
                boolean thin = part.applyAsDouble(reading(kelvin, Math.exp(middle))) < thickness;
                low = thin ? middle : low;
                high = thin ? high : middle;
            }
            return Optional.of(Math.exp(low));
        }

        /** How much hotter [K] a film is so thick [m] after the same time. */
        private Optional<Double> hotter(double thickness, double seconds) {
            return films.temperatureFor(thickness, seconds, chromium).value().map(t -> t.value() - kelvin);
        }

        /** How far apart in temperature [K] two films of one time still look alike. */
        private double apart(double seconds) {
            double limit = Figures.ALL.number("side_by_side");
            FilmColour one = reading(kelvin, seconds).colour();
            DoubleUnaryOperator difference = k ->
                    one.lab().distance(reading(kelvin + k, seconds).colour().lab());
            double low = 0;
            double high = MOST_APART;
            for (int i = 0; i < HALVINGS && high - low > 0.05; i++) {
                double middle = (low + high) / 2;
                boolean alike = difference.applyAsDouble(middle) < limit && difference.applyAsDouble(-middle) < limit;
                low = alike ? middle : low;
                high = alike ? high : middle;
            }
            return low;
        }
    }
}
