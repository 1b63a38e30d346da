package org.strawblue.core.job.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.PocketWish;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.Step;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.Cut;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.PocketCheck;
import org.strawblue.core.spring.SpringSearch;
import org.strawblue.core.spring.SpringVerdict;
import org.strawblue.core.spring.find.Finder;

/** Writes the step in which a spring is chosen for a pocket. */
final class PocketSteps {

    /** How many of the springs that fail are named with their reason. */
    private static final int NAMED = 6;

    /** How many changes of the pocket are told where no spring works. */
    private static final int CHANGES = 2;

    private PocketSteps() {}

    static Step of(PocketWish wish, List<MeasuredSpring> drawer) {
        StepDraft step = new StepDraft(Stage.SPRING, wish.name());
        Optional<Pocket> pocket = wish.pocket();
        if (pocket.isEmpty()) {
            return step.lead("Measure the pocket first: its length at rest and its travel decide the spring.")
                    .done();
        }
        step.findings(PocketCheck.findings(pocket.get()));
        if (drawer.isEmpty()) {
            return step.lead("No drawer of springs was given for the " + wish.name() + ": list some to choose from.")
                    .done();
        }
        choose(step, pocket.get(), drawer, SpringSearch.rank(pocket.get(), drawer));
        return step.done();
    }

    private static void choose(StepDraft step, Pocket pocket, List<MeasuredSpring> drawer, List<SpringVerdict> ranked) {
        Optional<SpringVerdict> best =
                ranked.stream().filter(SpringVerdict::works).findFirst();
        if (best.isPresent()) {
            use(step, pocket, best.get());
            others(step, ranked, best.get());
        } else {
            step.lead("No spring in the drawer works in the " + pocket.name() + ".");
            step.finding(none(pocket));
            step.findings(Finder.helping(pocket, drawer, CHANGES));
        }
        ranked.stream().filter(v -> !v.works()).limit(NAMED).forEach(v -> step.reasons(List.of(failure(v))));
        long more = ranked.stream().filter(v -> !v.works()).count() - NAMED;
        if (more > 0) {
            step.reason("{} more do not work either; the command “spring” tells why of each.", Quantity.number(more));
        }
    }

    private static void use(StepDraft step, Pocket pocket, SpringVerdict best) {
        CompressionSpring spring = best.spring();
        Optional<Cut> cut = spring.cut();
        if (cut.isPresent()) {
            step.lead(
                    "Use “" + name(best) + "”, cut down by {} coils to {}.",
                    Quantity.number(cut.get().removed()),
                    Quantity.number(spring.nominal().total()));
            step.hazards("spring-cut");
        } else {
            step.lead("Use “" + name(best) + "” as it is.");
        }
        step.hazards("spring-loose");
        step.figure("Chance that it works", Chances.of(best.probability(), spring.rate()));
        step.figure("Force at rest", spring.force(pocket.lengthAtRest()));
        step.figure("Force at full travel", spring.force(pocket.lengthAtFullTravel()));
        step.figure("Rate", spring.rate());
        step.figure("Free length", spring.freeLength());
        step.figure("Solid length", spring.solidLength());
        step.figure("Outside diameter at full travel", spring.outside(pocket.lengthAtFullTravel()));
        step.findings(best.cautions());
        step.picture(drawing(pocket, spring, name(best)));
        step.picture(forceLength(pocket, spring));
    }

    private static void others(StepDraft step, List<SpringVerdict> ranked, SpringVerdict best) {
        ranked.stream()
                .filter(SpringVerdict::works)
                .filter(v -> v != best)
                .limit(2)
                .forEach(v -> step.reason(
                        "“" + name(v) + "” would do too, with a chance of {}.", Chances.told(v.probability())));
    }

    private static Phrase failure(SpringVerdict verdict) {
        StringBuilder template = new StringBuilder("Not “" + name(verdict) + "”: ");
        java.util.ArrayList<Amount> amounts = new java.util.ArrayList<>();
        for (Phrase reason : verdict.failures()) {
            template.append(amounts.isEmpty() ? "" : "; ").append(reason.template());
            amounts.addAll(reason.amounts());
        }
        return new Phrase(template.append(".").toString(), amounts);
    }

    private static Finding none(Pocket pocket) {
        return new Finding.Caution(
                Phrase.of("No spring in the drawer works in the " + pocket.name() + ", cut or uncut."),
                Phrase.of("Each is named below with what stops it."),
                Phrase.of("Change the pocket a little, or buy or wind a spring for it."));
    }

    private static String name(SpringVerdict verdict) {
        return verdict.spring().spring().name().replace("{}", "{ }");
    }

    private static Picture drawing(Pocket pocket, CompressionSpring spring, String name) {
        return new Picture.SpringInPocket(
                Phrase.of("“" + name + "” in the " + pocket.name() + ", to scale"),
                spring.nominal().wire(),
                spring.nominal().outside(),
                spring.nominal().total(),
                spring.nominal().ends().first().closed(),
                spring.nominal().ends().first().ground(),
                spring.freeLength().value(),
                pocket.lengthAtRest(),
                pocket.lengthAtFullTravel(),
                spring.solidLength().value(),
                spring.outside(pocket.lengthAtFullTravel()).value(),
                orNone(pocket.bore()),
                orNone(pocket.rod()));
    }

    private static double orNone(OptionalDouble size) {
        return size.orElse(0);
    }

    private static Picture forceLength(Pocket pocket, CompressionSpring spring) {
        Estimate rate = spring.rate();
        return new Picture.ForceLength(
                Phrase.of("Force against length"),
                spring.freeLength().value(),
                spring.solidLength().value(),
                rate.value(),
                rate.low(),
                rate.high(),
                pocket.lengthAtRest(),
                pocket.lengthAtFullTravel(),
                pocket.forceAtRest(),
                pocket.forceAtFullTravel(),
                spring.forceAtSet().map(Estimate::value).orElse(Double.POSITIVE_INFINITY));
    }
}
