package org.strawblue.core.assembly;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;

/**
 * What the heat that loosens a high-strength locking does to the temper of the part it sits in.
 *
 * <p>The removal counts as one more temper after the first, at the temperature and for the time told in {@code
 * practice.csv}; the part is taken to get as hot as the joint. Source: the tempering law of the steel.
 *
 * @param before hardness as tempered [HRC]
 * @param gently hardness after the coolest and shortest removal [HRC]
 * @param harshly hardness after the hottest and longest [HRC]
 */
public record Removal(Estimate before, Estimate gently, Estimate harshly) {

    /** How long a temper is taken to have been where nobody told [s]. */
    public static double usualSeconds() {
        return Figures.ALL.si("usual_temper", Dimension.TIME);
    }

    /** @param temper what the part had at its making */
    public static Answer<Removal> of(Steel steel, Temper temper) {
        Estimate heat = Figures.ALL.estimate("removal", Dimension.TEMPERATURE);
        Estimate time = Figures.ALL.estimate("removal_time", Dimension.TIME);
        return Tempering.hardness(steel, List.of(temper))
                .then(before -> after(steel, temper, new Temper(heat.high(), time.high()))
                        .then(harshly -> {
                            // what is said of the harsh one holds for the gentle one too
                            Estimate gently = after(steel, temper, new Temper(heat.low(), time.low()))
                                    .value()
                                    .orElse(before);
                            return Answer.of(new Removal(before, gently, harshly), findings(temper, before, harshly));
                        }));
    }

    private static Answer<Estimate> after(Steel steel, Temper temper, Temper removal) {
        return Tempering.hardness(steel, List.of(temper, removal));
    }

    private static List<Finding> findings(Temper temper, Estimate before, Estimate harshly) {
        List<Finding> all = new ArrayList<>(fumes());
        Estimate heat = Figures.ALL.estimate("removal", Dimension.TEMPERATURE);
        double loss = before.value() - harshly.value();
        if (temper.kelvin() < heat.high() && loss > 0) {
            all.add(new Finding.Caution(
                    Phrase.of("To heat it loose can cost the part up to {} of hardness.", Quantity.hardness(loss)),
                    Phrase.of(
                            "It lets go at {}; the part was tempered at {}.",
                            heat.band(),
                            Quantity.temperature(temper.kelvin())),
                    Phrase.of(
                            "Use a strength that hand tools undo on anything hard; else heat the screw alone with a soldering"
                                    + " iron, the hard part in a wet rag, and turn it the moment it gives.")));
        }
        return all;
    }

    /** What heat does to the locking itself. */
    public static List<Finding> fumes() {
        return List.of(new Finding.Caution(
                Phrase.of("Heated, the set fluid gives off fumes that must not be breathed."),
                Phrase.of("It breaks down as it lets go; oil and grease beside it may burn."),
                Phrase.of("Outside or under an extractor, face away, no open flame on anything that was oiled; fire"
                        + " extinguisher within reach.")));
    }
}
