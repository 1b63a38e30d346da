package org.strawblue.core.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.AsQuenchedHardness;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.HardeningHeat;
import org.strawblue.core.steel.QuenchFit;
import org.strawblue.core.steel.QuenchFits;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenched;

/** What cannot be hardened this way, and what to do instead. */
final class HardeningStops {

    private HardeningStops() {}

    /** The steel does not harden at all. */
    static List<Finding> steel(Grade grade) {
        Optional<Estimate> full = AsQuenchedHardness.of(grade).value();
        boolean caseOnly = grade.catalogued() && grade.madeFor().isEmpty();
        if (caseOnly) {
            return List.of(tooLittleCarbon(grade, full));
        }
        if (full.isEmpty()) {
            return AsQuenchedHardness.of(grade).findings();
        }
        return full.get().high() < HardeningHeat.toolHardness() ? List.of(tooLittleCarbon(grade, full)) : List.of();
    }

    private static Finding tooLittleCarbon(Grade grade, Optional<Estimate> full) {
        Phrase why = full.map(hrc -> Phrase.of(
                        "It holds too little carbon: even quenched in brine it reaches {}, and only where thin.",
                        hrc.band()))
                .orElse(Phrase.of("It holds too little carbon for its martensite to be hard."));
        return new Finding.Stop(
                Phrase.of(article(grade) + " cannot be hardened through to a tool hardness."),
                why,
                Phrase.of(
                        "Make the part of a steel that hardens, such as O1 or 1084; or have it carburised, which gives it a"
                                + " hard case over a soft core."));
    }

    /** The quench breaks this steel, or does nothing for it, or does not suit the shape. */
    static List<Finding> quench(Grade grade, PartShape shape, Quenchant quench) {
        if (quench.family() == Quenchant.Family.PLATES && !(shape instanceof PartShape.Flat)) {
            return List.of(new Finding.Stop(
                    Phrase.of("Plates cool flat parts only."),
                    Phrase.of("A round or square bar or a tube touches them along lines."),
                    Phrase.of("Use " + words(grade) + ".")));
        }
        if (QuenchFits.of(grade, quench.family()) != QuenchFit.NEVER) {
            return List.of();
        }
        boolean mild = quench.family() == Quenchant.Family.AIR || quench.family() == Quenchant.Family.PLATES;
        return List.of(new Finding.Stop(
                Phrase.of(article(grade) + " is not hardened in " + quench.name() + "."),
                Phrase.of(
                        mild
                                ? "It cools far too slowly for this steel, which stays soft."
                                : "It cracks this steel, often at once."),
                Phrase.of("Use " + words(grade) + ".")));
    }

    /** The source does not reach the temperature, or cannot be held there long enough. */
    static List<Finding> heat(Grade grade, HeatSource source, Estimate window, Estimate soak) {
        List<Finding> stops = new ArrayList<>();
        Estimate reach = source.traits().reach();
        boolean still = !(source instanceof HeatSource.Kiln || source instanceof HeatSource.Forge)
                && source.gas().isEmpty();
        if (reach.high() < window.low() || still) {
            stops.add(new Finding.Stop(
                    Phrase.of(
                            "The " + source.name() + " does not reach the {} that " + grade.name() + " needs.",
                            Quantity.temperature(window.low())),
                    Phrase.of("It gets to about {}.", reach.quantity()),
                    Phrase.of(cooler(window))));
        }
        boolean hand = source instanceof HeatSource.Torch;
        if (hand && soak.low() > SteelProperties.HEAT.si("long-soak", Dimension.TIME)) {
            stops.add(new Finding.Stop(
                    Phrase.of(
                            grade.name() + " wants {} at heat, which no hand holds with a torch.",
                            Quantity.time(soak.low())),
                    Phrase.of("Its carbides dissolve slowly; cut short, it comes out soft, and overheated it cracks."),
                    Phrase.of("Use a kiln or send it to a heat treater; or make the part of O1 or 1084.")));
        }
        return stops;
    }

    private static String cooler(Estimate window) {
        return window.low() > SteelProperties.HEAT.si("high-heat", Dimension.TEMPERATURE)
                ? "Send it to a heat treater with a furnace for it; or make the part of O1, 1084 or another steel that hardens"
                        + " at a cherry red."
                : "Use a kiln, a forge, or a strong torch in a nest of firebrick.";
    }

    /** The section is too large for this quench: even the surface comes out soft. */
    static Optional<Finding> soft(HardeningPlan plan) {
        if (plan.quenched().verdict() != Quenched.Verdict.SOFT) {
            return Optional.empty();
        }
        return Optional.of(new Finding.Stop(
                Phrase.of(
                        plan.grade().name() + " of {} section stays soft in "
                                + plan.quench().name() + ".",
                        Quantity.length(plan.shape().section())),
                Phrase.of(
                        "It cools too slowly: about {} at the surface.",
                        plan.quenched().surface().quantity()),
                Phrase.of("Use " + words(plan.grade()) + ", or a steel that hardens deeper, such as O1.")));
    }

    static Finding noQuench(Grade grade) {
        return new Finding.Stop(
                Phrase.of("None of the quenches at hand hardens this part."),
                Phrase.of("They are too slow for this steel and section, or crack it."),
                Phrase.of("Get " + words(grade) + ", or choose a steel for the quench you have."));
    }

    /** The quenches a steel is made for, in words. */
    static String words(Grade grade) {
        List<String> words = new ArrayList<>();
        for (Quenchant.Family family : Quenchant.Family.values()) {
            QuenchFit fit = QuenchFits.of(grade, family);
            if (fit == QuenchFit.MADE_FOR) {
                words.add(family == Quenchant.Family.PLATES ? "plates (flat parts)" : family.word());
            }
            if (fit == QuenchFit.THIN && family == Quenchant.Family.OIL) {
                words.add("fast oil where it is thin");
            }
        }
        return words.isEmpty() ? "oil" : String.join(" or ", words);
    }

    private static String article(Grade grade) {
        return grade.catalogued() ? grade.name() : "This steel";
    }
}
