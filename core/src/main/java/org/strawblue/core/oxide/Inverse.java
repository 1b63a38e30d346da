package org.strawblue.core.oxide;

import java.util.Collection;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;

/**
 * From film to temperature, the time being known.
 *
 * <p>T of the middle of the band; its standard deviation from the width w of the name's band in temperature (flat,
 * w/√12), the scatter of colour against temperature, and the steel's chromium.
 *
 * @param initial thickness at the start [m]
 * @param seconds time at temperature [s]
 */
record Inverse(GrowthLaw law, double initial, double seconds, ChromiumEffect effect) {

    Answer<Estimate> of(Band thickness, Collection<Basis> bases) {
        if (thickness.low() <= initial || thickness.high() > FilmPalette.limit()) {
            return Answer.refused(notAColour(thickness));
        }
        double value = temperature(thickness.middle());
        double width = temperature(thickness.high()) - temperature(thickness.low());
        double half = Normal.HALF_OF_80 * sd(value, width);
        return Limits.TEMPERATURE
                .check(value)
                .map(Answer::<Estimate>refused)
                .orElseGet(() -> Answer.of(
                        Estimate.of(Dimension.TEMPERATURE, value, value - half, value + half, bases),
                        effect.findings()));
    }

    /** Bright and grey have but one edge: what each tells is a limit. */
    Finding oneSided(ColourName name, Band thickness) {
        boolean bright = name == ColourName.BRIGHT;
        double edge = temperature(bright ? thickness.high() : thickness.low());
        double half = Normal.HALF_OF_80 * sd(edge, 0);
        return new Finding.Stop(
                Phrase.of(
                        name.word() + " tells only that after {} the steel was " + (bright ? "below" : "above") + " {}",
                        Quantity.time(seconds),
                        Quantity.temperature(bright ? edge + half : edge - half)),
                Phrase.of("This colour has no second edge by which to tell how far."),
                Phrase.of("Use a thermometer or crayons."));
    }

    private double temperature(double thickness) {
        return FilmGrowth.temperatureOfFactor(
                law, law.equivalentSeconds(initial, thickness) / (effect.rate() * seconds));
    }

    private double sd(double kelvin, double width) {
        double name = width / Math.sqrt(12);
        double chromium = effect.logSd() * FilmGrowth.kelvinPerLog(law, kelvin);
        return Math.hypot(Math.hypot(name, chromium), Uncertainty.sd(seconds));
    }

    private Finding notAColour(Band thickness) {
        return new Finding.Stop(
                Phrase.of(
                        "a film of {} lies outside {} to {}",
                        Quantity.length(thickness.middle()),
                        Quantity.length(initial),
                        Quantity.length(FilmPalette.limit())),
                Phrase.of("A thinner film is the one air leaves on bright steel; a thicker one is plain grey scale."),
                Phrase.of("Use a thermometer or crayons."));
    }
}
