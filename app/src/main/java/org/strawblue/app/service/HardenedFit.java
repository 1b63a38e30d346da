package org.strawblue.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.fit.Chain;
import org.strawblue.core.fit.FinishMethod;
import org.strawblue.core.fit.Finishing;
import org.strawblue.core.fit.FinishingPlan;
import org.strawblue.core.fit.FinishingStep;
import org.strawblue.core.fit.Fit;
import org.strawblue.core.fit.GrowthLearning;
import org.strawblue.core.fit.Heating;
import org.strawblue.core.fit.Link;
import org.strawblue.core.fit.LoggedGrowth;
import org.strawblue.core.fit.Roundness;
import org.strawblue.core.fit.SizeChange;
import org.strawblue.core.fit.Spread;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Property;

/**
 * What hardening does to a fit, and how the sizes are reached all the same.
 *
 * @param secondsInAir at the hardening temperature [s]; 0 where shielded
 */
public record HardenedFit(Grade grade, boolean shaft, boolean hole, List<LoggedGrowth> log, double secondsInAir) {

    public HardenedFit {
        log = List.copyOf(log);
    }

    void tell(Sheet.Builder sheet, Fit fit) {
        List<Link> links = new ArrayList<>();
        links.add(Link.plus("hole", new Spread.Within(fit.hole())));
        links.add(Link.minus("shaft", new Spread.Within(fit.shaft())));
        if (hole) {
            links.add(
                    Link.plus("change of the hole", part(sheet, "hole", Feature.Kind.BORE, fit.nominal(), fit.hole())));
        }
        if (shaft) {
            links.add(Link.minus(
                    "change of the shaft", part(sheet, "shaft", Feature.Kind.OUTSIDE, fit.nominal(), fit.shaft())));
        }
        double chance = new Chain("clearance", links).chanceWithin(fit.clearance());
        sheet.add(new Entry.Words(
                "chance_untouched",
                "If not finished hard",
                Phrase.of("{} that it still fits, made to size and only hardened", Quantity.fraction(chance))));
        if (hole && shaft) {
            sheet.findings(List.of(order()));
        }
    }

    /** Tells one part's way and gives its change. */
    private Spread part(Sheet.Builder sheet, String name, Feature.Kind kind, double nominal, Band limits) {
        Feature feature = new Feature("the " + name, kind, nominal, Optional.of(limits));
        Answer<Estimate> share = GrowthLearning.share(grade, kind, log);
        Estimate change = SizeChange.ofShare(feature, share.value().orElseThrow());
        String label = Character.toUpperCase(name.charAt(0)) + name.substring(1);
        sheet.add("change_" + name, label + ", change on hardening", change);
        Answer<FinishingPlan> plan = Finishing.planFor(feature, change, heating(), FinishMethod.LAP);
        plan.value().ifPresent(p -> {
            words(sheet, "before_" + name, label + ", before hardening", p.stepsBefore());
            words(sheet, "after_" + name, label + ", after the temper", p.stepsAfter());
        });
        sheet.add("out_of_round_" + name, label + ", likely out of round", Roundness.likely(kind, nominal))
                .findings(share.findings())
                .findings(plan.findings())
                .findings(Roundness.findings(kind));
        return new Spread.Told(change);
    }

    private Heating heating() {
        double kelvin = grade.found(Property.AUSTENITISE).map(Estimate::value).orElse(0.0);
        return new Heating(kelvin, secondsInAir, secondsInAir == 0 || kelvin == 0);
    }

    private static void words(Sheet.Builder sheet, String key, String label, List<FinishingStep> steps) {
        for (int i = 0; i < steps.size(); i++) {
            FinishingStep step = steps.get(i);
            String nth = i == 0 ? key : key + "_" + (i + 1);
            sheet.add(new Entry.Words(nth, i == 0 ? label : "", step.lead()));
        }
    }

    private static Finding order() {
        return new Finding.Note(
                Phrase.of("Finish the hole first, measure it, then lap the shaft to it."),
                Phrase.of("A hole is harder to measure and to alter than a shaft."),
                Phrase.of("Ask again with --hole as measured: the shaft to make for it is told."));
    }
}
