package org.strawblue.core.oxide;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;

/**
 * What chromium in the steel does to its film.
 *
 * <p>ln f = −a·max(Cr − Cr₀, 0): growth is f times as fast; Cr [mass %], a and Cr₀ in {@code chromium.csv}. Weakly
 * founded; up to 6 % Cr only.
 */
record ChromiumEffect(double chromium) {

    private static final Constants N = Constants.of(ChromiumEffect.class, "chromium.csv");

    /** f [1] */
    double rate() {
        return Math.exp(logRate());
    }

    /** One standard deviation of ln f. */
    double logSd() {
        return N.number("relative_sd") * -logRate();
    }

    List<Basis> bases() {
        return logRate() == 0 ? List.of() : List.of(N.basis("film growth against chromium", "slope"));
    }

    /** A caution where the steel holds enough chromium to matter. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        if (chromium > N.inUnit("widened_above", "mass %")) {
            findings.add(new Finding.Caution(
                    Phrase.of("With {} of chromium the colour is a weak guide", share(chromium)),
                    Phrase.of("Chromium slows the film: each colour comes hotter than on plain carbon steel, by an "
                            + "amount known from a single report."),
                    Phrase.of("Go by a thermometer or crayons, or heat a scrap of the same bar beside one that is "
                            + "measured.")));
        }
        return findings;
    }

    /** Why a stainless or high-chromium steel gets no answer. */
    static Finding refusal(double chromium, double limit) {
        return new Finding.Stop(
                Phrase.of(
                        "{} of chromium lies outside {} to {} for film colours",
                        share(chromium),
                        share(0),
                        share(limit)),
                Phrase.of(
                        "Such steel grows a chromium-rich film that is thinner and follows another law: after an hour "
                                + "18/8 stainless shows straw some {} and blue some {} hotter than carbon steel.",
                        shift("stainless_straw_shift"),
                        shift("stainless_blue_shift")),
                Phrase.of("Do not temper this steel by colour. Use a thermometer, crayons or a thermocouple."));
    }

    private static Quantity shift(String key) {
        return Quantity.temperatureDifference(N.si(key, Dimension.TEMPERATURE_DIFFERENCE));
    }

    private double logRate() {
        return -N.inUnit("slope", "1/mass %") * Math.max(chromium - N.inUnit("from", "mass %"), 0);
    }

    private static Quantity share(double massPerCent) {
        return new Quantity(Dimension.FRACTION, massPerCent / 100);
    }
}
