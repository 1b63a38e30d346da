package org.strawblue.core.assembly;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** What to mind when a part is blued by heat. */
final class BlueFindings {

    private BlueFindings() {}

    static List<Finding> with(HeatBlue blue, List<Finding> more) {
        List<Finding> all = new ArrayList<>();
        double fast = Figures.ALL.si("blue_in_oven", Dimension.TIME);
        if (blue.until() - blue.from() < fast) {
            all.add(new Finding.Caution(
                    Phrase.of(
                            "At {} the colour is there for {} only.",
                            Quantity.temperature(blue.kelvin()),
                            Quantity.time(blue.until() - blue.from())),
                    Phrase.of("Nobody lifts two pieces in the same second."),
                    Phrase.of("Go cooler and longer: the colour then stays for minutes.")));
        }
        all.add(new Finding.Note(
                Phrase.of(
                        "Go by the eye: by the clock it may come {} after the start.",
                        blue.seconds().band()),
                Phrase.of("Steel, polish and the plate's true heat are never quite those of the law."),
                Phrase.of(
                        "Run a scrap of the same steel and polish first, then give the piece that time less a little and"
                                + " watch.")));
        double pair = Figures.ALL.si("oven_pair", Dimension.TEMPERATURE_DIFFERENCE);
        all.add(
                blue.apart() < pair
                        ? new Finding.Note(
                                Phrase.of("Two pieces match only within {}.", difference(blue.apart())),
                                Phrase.of("Side by side on a plate they are apart by about {}.", difference(pair)),
                                Phrase.of(
                                        "Both polished with the same last grit, degreased, not touched; together in brass filings"
                                                + " or sand, stirred, or on one thick plate; lift and oil both at once; if one lags, put it"
                                                + " back, never the other on."))
                        : new Finding.Note(
                                Phrase.of("Two pieces match within {}.", difference(blue.apart())),
                                Phrase.of("Side by side on a plate they are apart by about {}.", difference(pair)),
                                Phrase.of(
                                        "Same last grit, degreased, not touched, heated together, lifted and oiled at once.")));
        all.add(new Finding.Caution(
                Phrase.of("The colour hides the metal's heat: it burns at every colour and at none."),
                Phrase.of("Oil on hot steel smokes and may flare."),
                Phrase.of("Tongs, dry gloves; let it cool before oiling; no nitrate or caustic bath at home.")));
        all.addAll(more);
        return all;
    }

    static Finding outOfReach(ColourName colour, double kelvin) {
        return new Finding.Stop(
                Phrase.of(
                        "At {} " + colour.word() + " does not come in any useful time.", Quantity.temperature(kelvin)),
                Phrase.of("The film law is known from 5 seconds to 10 days."),
                Phrase.of("Ask with a time instead of a temperature: the temperature for it is told."));
    }

    private static Quantity difference(double kelvin) {
        return Quantity.temperatureDifference(kelvin);
    }
}
