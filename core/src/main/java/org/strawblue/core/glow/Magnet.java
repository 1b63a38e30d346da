package org.strawblue.core.glow;

import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/**
 * The magnet as a guide on heating.
 *
 * <p>Steel lets go of a magnet where its ferrite turns to austenite, from Ac1 upwards, and at the Curie point of iron,
 * 770 °C, at the latest. So it may let go below the heat for hardening, and never tells when that is reached.
 */
public final class Magnet {

    private Magnet() {}

    /** Where slow heating makes a steel let go of a magnet [K], from its Ac1 [K]; what else it takes to harden. */
    public static Answer<Estimate> letsGo(double ac1, double hardening) {
        double curie = GlowGuide.curiePoint().si();
        double first = Math.min(ac1, curie);
        Estimate estimate =
                Estimate.of(Dimension.TEMPERATURE, (first + curie) / 2, first, curie, GlowGuide.curieBasis());
        return Answer.of(estimate, ac1 < curie ? goOn(estimate, hardening) : notYet(ac1, hardening));
    }

    private static Finding goOn(Estimate letsGo, double hardening) {
        return new Finding.Note(
                Phrase.of(
                        "The magnet lets go between {} and {}; hardening heat is {}",
                        new Quantity(Dimension.TEMPERATURE, letsGo.low()),
                        new Quantity(Dimension.TEMPERATURE, letsGo.high()),
                        Quantity.temperature(hardening)),
                Phrase.of("Losing its magnetism shows that the change has begun, or that iron's own limit is passed."),
                Phrase.of("Go on by {} more, and hold.", Quantity.temperatureDifference(hardening - letsGo.value())));
    }

    private static Finding notYet(double ac1, double hardening) {
        return new Finding.Caution(
                Phrase.of("The magnet lets go before this steel begins to change at {}", Quantity.temperature(ac1)),
                Phrase.of(
                        "At {} iron itself stops being magnetic; that is no sign of austenite here.",
                        GlowGuide.curiePoint()),
                Phrase.of(
                        "Do not quench on the magnet: go to {} by another indicator.",
                        Quantity.temperature(hardening)));
    }
}
