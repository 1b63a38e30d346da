package org.strawblue.core.job.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.fit.Heating;
import org.strawblue.core.glow.GlowColour;
import org.strawblue.core.glow.GlowGuide;
import org.strawblue.core.heat.Hardening;
import org.strawblue.core.heat.HardeningPlan;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.job.Item;
import org.strawblue.core.job.Stage;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenchants;
import org.strawblue.core.steel.Quenched;

/** Chooses how a part is hardened from what the shop has, and writes the step. */
final class HardenStep {

    private final Brief brief;
    private final HardeningPlan plan;
    private final StepDraft step;

    private HardenStep(Brief brief, HardeningPlan plan) {
        this.brief = brief;
        this.plan = plan;
        this.step = new StepDraft(Stage.HARDEN, brief.piece().name());
    }

    /** With the means the job names; else with the best of the shop's; else with what would have to be borrowed. */
    static Answer<HardeningPlan> plan(Brief brief) {
        Answer<Quenchant> quench = quench(brief);
        return quench.then(q -> plan(brief, q));
    }

    private static Answer<Quenchant> quench(Brief brief) {
        Optional<Quenchant> wished = brief.piece().harden().quench();
        if (wished.isPresent()) {
            return Answer.of(wished.get());
        }
        List<Quenchant> shop = brief.job().shop().quenchants();
        return Hardening.chooseQuench(brief.grade(), brief.shape(), shop.isEmpty() ? Quenchants.all() : shop);
    }

    private static Answer<HardeningPlan> plan(Brief brief, Quenchant quench) {
        Optional<HeatSource> wished = brief.piece().harden().with();
        if (wished.isPresent()) {
            return plan(brief, quench, wished.get());
        }
        List<HeatSource> shop = brief.job().shop().hardeningHeat();
        return shop.stream()
                .map(source -> plan(brief, quench, source))
                .filter(answer -> answer.value().isPresent())
                .findFirst()
                .orElseGet(() -> plan(brief, quench, shop.isEmpty() ? HeatSources.of("kiln") : shop.get(0)));
    }

    private static Answer<HardeningPlan> plan(Brief brief, Quenchant quench, HeatSource source) {
        return Hardening.plan(brief.grade(), brief.shape(), quench, source);
    }

    /** What the surface goes through, for scale and lost carbon. */
    static Heating heating(Brief brief, HardeningPlan plan) {
        return new Heating(hot(brief, plan), soak(brief, plan), false);
    }

    private static double hot(Brief brief, HardeningPlan plan) {
        return brief.piece().harden().temperature().orElse(plan.austenitise().value());
    }

    private static double soak(Brief brief, HardeningPlan plan) {
        return brief.piece().harden().soak().orElse(plan.soak().value());
    }

    static StepDraft of(Brief brief, HardeningPlan plan, List<Finding> findings, List<Item> items) {
        HardenStep writer = new HardenStep(brief, plan);
        writer.lead();
        writer.preheat();
        writer.figures();
        writer.outcome();
        writer.guides();
        writer.items(items);
        return writer.step.findings(findings);
    }

    private void lead() {
        Amount heat = plan.austenitise().band();
        Amount soak = plan.soak().band();
        boolean air = plan.quench().family() == Quenchant.Family.AIR;
        String into = air ? "cool it in " : "quench in ";
        if (plan.toBath().isPresent() && !air) {
            step.lead(
                    "Heat to {}, soak {} once it is hot right through, then " + into
                            + plan.quench().name() + " within {}.",
                    heat,
                    soak,
                    new Quantity(Dimension.TIME, plan.toBath().get().low()));
        } else {
            step.lead(
                    "Heat to {}, soak {} once it is hot right through, then " + into
                            + plan.quench().name() + ".",
                    heat,
                    soak);
        }
        step.hazards(plan.source().traits().hazard(), "sharp-hot", plan.quench().hazard());
        if (plan.quench().family() == Quenchant.Family.OIL) {
            step.hazards("oil-water");
        }
        step.hazards("brittle");
    }

    private void preheat() {
        plan.preheat()
                .ifPresent(first -> step.then(plan.secondPreheat()
                        .map(second -> Phrase.of(
                                "On the way up let it even out at {}, and again at {}.", first.band(), second.band()))
                        .orElseGet(() -> Phrase.of("On the way up let it even out at {}.", first.band()))));
    }

    private void figures() {
        step.figure("To heat through, before the soak", plan.heatThrough());
        plan.toBath().ifPresent(t -> step.figure("From fire to bath, at most", t));
        step.figure("Bath", plan.quench().bath());
        step.figure("Hard at the surface", plan.quenched().surface());
        step.figure("Hard at the centre", plan.quenched().centre());
        step.figure("Austenite left over", plan.quenched().retained());
        if (plan.quenched().verdict() == Quenched.Verdict.SHELL) {
            step.figure("Depth of the hard shell", plan.quenched().depth());
        }
    }

    private void outcome() {
        Quenched quenched = plan.quenched();
        Quantity section = Quantity.length(brief.shape().section());
        Quantity through = Chances.told(quenched.through());
        switch (quenched.verdict()) {
            case THROUGH ->
                step.reason(
                        "A section of {} hardens right through in "
                                + plan.quench().name() + ".",
                        section);
            case LIKELY_THROUGH ->
                step.reason(
                        "A section of {} hardens right through in "
                                + plan.quench().name() + " with a chance of {}.",
                        section,
                        through);
            case SHELL ->
                step.reason(
                        "A section of {} hardens outside and stays softer inside; the chance of hardening through is {}.",
                        section,
                        through);
            case UNSURE, SOFT ->
                step.reason("The surface comes out hard with a chance of {} only.", Chances.told(quenched.skin()));
        }
    }

    private void guides() {
        step.figure("Magnet lets go", plan.magnet());
        GlowGuide.at(plan.austenitise().value()).value().ifPresent(glow -> {
            String names = glow.names().stream().map(GlowColour::name).collect(Collectors.joining(" to "));
            step.reason(
                    "The eye in a dim corner sees " + names + "; it is good to about {} either way, worse in daylight.",
                    Quantity.temperatureDifference(spread(glow.names())));
        });
        step.reason(
                "It begins to harden at about {} in the bath; leave it there until it can be held.",
                plan.martensiteStart().quantity());
    }

    private static double spread(List<GlowColour> names) {
        return names.stream()
                        .map(GlowColour::temperature)
                        .map(Estimate::band)
                        .mapToDouble(Band::width)
                        .max()
                        .orElse(0)
                / 2;
    }

    private void items(List<Item> items) {
        items.add(new Item(
                Phrase.of(
                        sentence(plan.quench().name()) + " at {}",
                        plan.quench().bath().band()),
                Phrase.of("to quench the " + brief.piece().name()),
                brief.job().shop().quenchants().stream()
                                .anyMatch(q -> q.key().equals(plan.quench().key()))
                        || brief.piece().harden().quench().isPresent()));
        items.add(new Item(
                Phrase.of(
                        sentence(plan.source().name()) + " for {}",
                        plan.austenitise().quantity()),
                Phrase.of("to harden the " + brief.piece().name()),
                brief.job().shop().hardeningHeat().stream()
                                .anyMatch(h -> h.name().equals(plan.source().name()))
                        || brief.piece().harden().with().isPresent()));
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
