package org.strawblue.core.fit;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/**
 * A hole warmed so that its shaft drops in.
 *
 * @param kelvin of the part with the hole [K]
 */
public record Warming(double kelvin, List<Finding> findings) {

    private static final double ROOM = Figures.ALL.number("room_to_drop_in");
    private static final double LEAST_ROOM = Figures.ALL.si("least_room_to_drop_in", Dimension.LENGTH);
    private static final double TEMPER = Figures.ALL.si("low_temper", Dimension.TEMPERATURE);
    private static final double MOST = Figures.ALL.si("warmest", Dimension.TEMPERATURE);

    public Warming {
        findings = List.copyOf(findings);
    }

    /** For the tightest pair to be expected; absent where so much heat would be no warming any more. */
    public static Optional<Warming> toAssemble(Estimate clearance, double nominal, Expansion hole) {
        double room = Math.max(LEAST_ROOM, ROOM * nominal);
        double kelvin = Expansion.warmUntil(-clearance.low(), room, nominal, hole);
        return kelvin > MOST ? Optional.empty() : Optional.of(new Warming(kelvin, cautions(kelvin, room)));
    }

    /** What heat does to the play. */
    public static List<Finding> atWork(Estimate cold, Estimate warm, double kelvin) {
        if (warm.low() > 0 || cold.low() <= 0) {
            return List.of();
        }
        return List.of(new Finding.Caution(
                Phrase.of("At {} it may seize.", Quantity.temperature(kelvin)),
                Phrase.of(
                        "The shaft grows more than the hole there: the clearance may come down to {}.",
                        Quantity.length(warm.low())),
                Phrase.of("Take a looser fit, or the same metal for both.")));
    }

    private static List<Finding> cautions(double kelvin, double room) {
        Finding burn = new Finding.Caution(
                Phrase.of("Hot metal looks cold."),
                Phrase.of(
                        "{} of play is left to drop it in; it grips in seconds, wherever it is then.",
                        Quantity.length(room)),
                Phrase.of(
                        "Gloves, a stop to drop it against, all ready at hand; never heat a closed hollow or an oily part"
                                + " with a flame."));
        return kelvin < TEMPER
                ? List.of(burn)
                : List.of(
                        burn,
                        new Finding.Caution(
                                Phrase.of("So much heat tempers hard steel anew."),
                                Phrase.of("{} is above a low temper.", Quantity.temperature(kelvin)),
                                Phrase.of("Warm only a soft body to it; else chill the shaft too, or press it.")));
    }
}
