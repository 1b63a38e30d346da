package org.strawblue.core.fit;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** What to mind about a size that is to be hardened. */
final class FinishingFindings {

    private FinishingFindings() {}

    static List<Finding> of(Feature feature, Estimate change, Heating heating, Surface surface) {
        List<Finding> all = new ArrayList<>();
        if (feature.kind() == Feature.Kind.BORE) {
            all.add(new Finding.Note(
                    Phrase.of("Whether " + feature.name() + " opens or closes cannot be told: {}.", change.band()),
                    Phrase.of("Steel that hardens through carries its holes outward with it; a hard shell over a soft"
                            + " core squeezes them shut."),
                    Phrase.of("Plug-gauge it after hardening, before any lapping.")));
        }
        if (surface.skin().high() > 0) {
            all.add(new Finding.Caution(
                    Phrase.of(
                            "The skin may lose its carbon to a depth of {}.",
                            Quantity.length(surface.skin().high())),
                    Phrase.of(
                            "So deep at most, after {} at {} in air; a file then bites though the steel below is hard.",
                            Quantity.time(heating.seconds()),
                            Quantity.temperature(heating.kelvin())),
                    Phrase.of("Wrap it in stainless foil or coat it with anti-scale paste, or leave that much more to"
                            + " take off.")));
        }
        return all;
    }

    static Finding tooMuchToLap(double most, double lapMost) {
        return new Finding.Caution(
                Phrase.of("Up to {} may have to come off when hard.", Quantity.length(most)),
                Phrase.of("By hand about {} can be lapped off a diameter and stay round.", Quantity.length(lapMost)),
                Phrase.of("Shield the part from air at heat, or have it ground."));
    }

    static Finding noStock(Feature feature) {
        return new Finding.Stop(
                Phrase.of(
                        "No finishing allowance is known for " + feature.name() + " of {}.",
                        Quantity.length(feature.nominal())),
                Phrase.of("The tables end below this size."),
                Phrase.of("Ask whoever will grind it what to leave on."));
    }
}
