package org.strawblue.core.oxide;

import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.history.Trace;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/**
 * A heat as a growth law sees it: so long at its peak temperature.
 *
 * @param peak highest temperature [K]
 * @param seconds time at the peak that grows the same film [s]
 * @param rate how fast this steel's film grows against plain carbon steel's [1]
 * @param sd one standard deviation of temperature [K]
 */
record Heat(double peak, double seconds, double rate, double sd) {

    static Heat of(Trace trace, GrowthLaw law, ChromiumEffect effect) {
        return of(trace.peak(), FilmGrowth.equivalentSeconds(trace, law), law, effect);
    }

    /** @param equivalentSeconds Θ of the heat so far [s]; @param peak its highest temperature [K] */
    static Heat of(double peak, double equivalentSeconds, GrowthLaw law, ChromiumEffect effect) {
        double seconds = equivalentSeconds / FilmGrowth.factor(law, peak);
        double sd = Math.hypot(Uncertainty.sd(seconds), effect.logSd() * FilmGrowth.kelvinPerLog(law, peak));
        return new Heat(peak, seconds, effect.rate(), sd);
    }

    /** Thickness [m] had the peak been {@code hotter} [K] than it was. */
    double thickness(GrowthLaw law, double initial, double hotter) {
        return law.thickness(initial, rate * seconds * FilmGrowth.factor(law, peak + hotter));
    }

    /** The temperature [K] to which the chart, made for its own time [s], would put this film. */
    double chartTemperature(GrowthLaw law, double chartSeconds) {
        return FilmGrowth.temperatureOfFactor(law, rate * seconds * FilmGrowth.factor(law, peak) / chartSeconds);
    }

    /** The chart's failure, told where it amounts to more than half the scatter. */
    Optional<Finding> againstTheChart(GrowthLaw law, double chartSeconds) {
        double chart = chartTemperature(law, chartSeconds);
        if (Math.abs(chart - peak) < sd / 2) {
            return Optional.empty();
        }
        return Optional.of(new Finding.Note(
                Phrase.of(
                        "The usual chart would read this colour as {}; the steel was at {}",
                        Quantity.temperature(chart),
                        Quantity.temperature(peak)),
                Phrase.of(
                        "The chart holds for about {} at temperature. Here the film grew as in {} at the peak: the "
                                + "colour goes by time as well as by heat.",
                        Quantity.time(chartSeconds),
                        Quantity.time(seconds)),
                Phrase.of("Judge the temper by temperature and time; read the colour by this time's ribbon.")));
    }
}
