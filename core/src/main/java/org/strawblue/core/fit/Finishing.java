package org.strawblue.core.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Grade;

/** The order in which a size is made: what before hardening, what after tempering, what is left on in between. */
public final class Finishing {

    private static final double MAKING_ERROR = Figures.ALL.si("making_error", Dimension.LENGTH);
    private static final double LAP_MOST = Figures.ALL.si("lap_most", Dimension.LENGTH);
    private static final Estimate POLISH = Figures.ALL.estimate("polish", Dimension.LENGTH);

    private Finishing() {}

    /** Growth as found for the grade. */
    public static Answer<FinishingPlan> plan(Feature feature, Grade grade, Heating heating, FinishMethod method) {
        return plan(feature, SizeChange.asQuenched(grade), heating, method);
    }

    /** @param asQuenched growth of a length on hardening [1] */
    public static Answer<FinishingPlan> plan(
            Feature feature, Estimate asQuenched, Heating heating, FinishMethod method) {
        return planFor(feature, SizeChange.of(feature, asQuenched), heating, method);
    }

    /** @param change of the size by hardening and tempering [m], however it is known */
    public static Answer<FinishingPlan> planFor(
            Feature feature, Estimate change, Heating heating, FinishMethod method) {
        Surface surface = Surface.of(heating);
        List<Finding> findings = new ArrayList<>(FinishingFindings.of(feature, change, heating, surface));
        if (feature.limits().isEmpty()) {
            return Answer.of(asItComes(feature, change, surface), findings);
        }
        Band limits = feature.limits().get();
        Optional<Band> aim = aimBefore(limits, total(feature, change, surface));
        if (aim.isPresent()) {
            return Answer.of(toSizeBefore(feature, change, surface, aim.get()), findings);
        }
        Optional<Stock> stock = Stock.of(feature, method);
        if (stock.isEmpty()) {
            findings.add(FinishingFindings.noStock(feature));
            return Answer.refused(findings);
        }
        FinishingPlan plan = finishedHard(feature, limits, change, surface, stock.get());
        Band before = plan.before().orElse(limits);
        double most = Math.abs(
                feature.kind() == Feature.Kind.BORE
                        ? limits.high() - before.low() - change.low()
                        : before.high() + change.high() - limits.low());
        if (stock.get().method() == FinishMethod.LAP && most > LAP_MOST) {
            findings.add(FinishingFindings.tooMuchToLap(most, LAP_MOST));
        }
        return Answer.of(plan, findings);
    }

    /** Hardening and the cleaning that follows, together [m]. Cleaning makes holes larger and all else smaller. */
    private static Band total(Feature feature, Estimate change, Surface surface) {
        double least = POLISH.low();
        double most = POLISH.high() + 2 * surface.scale().high();
        return feature.kind() == Feature.Kind.BORE
                ? new Band(Dimension.LENGTH, change.low() + least, change.high() + most)
                : new Band(Dimension.LENGTH, change.low() - most, change.high() - least);
    }

    /** Sizes that end within limits at either end of what may happen; absent where nobody can work that closely. */
    private static Optional<Band> aimBefore(Band limits, Band total) {
        double low = limits.low() - total.low();
        double high = limits.high() - total.high();
        return high - low >= 2 * MAKING_ERROR ? Optional.of(new Band(Dimension.LENGTH, low, high)) : Optional.empty();
    }

    private static FinishingPlan asItComes(Feature feature, Estimate change, Surface surface) {
        Band after = new Band(Dimension.LENGTH, feature.nominal() + change.low(), feature.nominal() + change.high());
        FinishingStep make = new FinishingStep(
                Phrase.of("Make " + feature.name() + " {}.", Quantity.length(feature.nominal())),
                Phrase.of("No limits were asked for; hardened and tempered it will measure {}.", after));
        return new FinishingPlan(
                feature,
                FinishingPlan.Route.AS_IT_COMES,
                change,
                surface.skin(),
                Optional.empty(),
                Optional.empty(),
                List.of(make),
                List.of());
    }

    private static FinishingPlan toSizeBefore(Feature feature, Estimate change, Surface surface, Band aim) {
        FinishingStep make = new FinishingStep(
                Phrase.of(FinishingWords.make(feature) + " {}.", aim),
                Phrase.of(
                        "Hardening will change it by {}, which the limits can take; it need not be touched again but to"
                                + " clean it.",
                        change.band()));
        FinishingStep clean = new FinishingStep(
                Phrase.of("Clean " + feature.name() + " with fine abrasive and measure it: {}.", limits(feature)),
                Phrase.of("Cleaning takes off {}.", POLISH.band()));
        return new FinishingPlan(
                feature,
                FinishingPlan.Route.TO_SIZE_BEFORE,
                change,
                surface.skin(),
                Optional.of(aim),
                Optional.empty(),
                List.of(make),
                List.of(clean));
    }

    private static FinishingPlan finishedHard(
            Feature feature, Band limits, Estimate change, Surface surface, Stock stock) {
        double poor = 2 * surface.skin().value();
        Band left = new Band(
                Dimension.LENGTH, stock.band().low() + poor, stock.band().high() + poor);
        Band before = feature.kind() == Feature.Kind.BORE
                ? band(limits.low() - change.high() - left.high(), limits.low() - change.high() - left.low())
                : band(limits.high() - change.low() + left.low(), limits.high() - change.low() + left.high());
        return new FinishingPlan(
                feature,
                FinishingPlan.Route.FINISHED_HARD,
                change,
                surface.skin(),
                Optional.of(before),
                Optional.of(left),
                FinishingWords.before(feature, before, left, change),
                FinishingWords.after(feature, limits, stock.method()));
    }

    private static Band limits(Feature feature) {
        return feature.limits().orElseThrow();
    }

    private static Band band(double low, double high) {
        return new Band(Dimension.LENGTH, low, high);
    }
}
