package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.assembly.HeatBlue;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.AssemblyWish;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.Step;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;

/** A temper colour as a finish, and what it leaves of the hardness. */
final class BlueSteps {

    private BlueSteps() {}

    static List<Step> of(Job job, List<PartRoute> routes) {
        List<Step> steps = new ArrayList<>();
        for (AssemblyWish.Finish finish : job.assembly().finishes()) {
            routes.stream()
                    .filter(r -> r.piece().name().equals(finish.part()))
                    .map(r -> step(job, r, finish))
                    .forEach(steps::add);
        }
        return steps;
    }

    private static Step step(Job job, PartRoute route, AssemblyWish.Finish finish) {
        StepDraft step = new StepDraft(Stage.FINISH, finish.part());
        double chromium = route.piece()
                .steel()
                .map(Grade::composition)
                .map(c -> c.of(Element.CR))
                .orElse(0.0);
        Answer<HeatBlue> answer = finish.kelvin().isPresent()
                ? HeatBlue.at(finish.kelvin().getAsDouble(), finish.colour(), job.light(), chromium)
                : HeatBlue.in(HeatBlue.usualSeconds(), finish.colour(), job.light(), chromium);
        String what = finish.colour().word();
        if (answer.value().isEmpty()) {
            return step.lead("The colour " + what + " is not to be had so.")
                    .findings(answer.findings())
                    .done();
        }
        HeatBlue blue = answer.value().get();
        step.lead(
                "Polish it, degrease it, and hold the metal at {} until it is " + what + ": about {}, by the eye.",
                Quantity.temperature(blue.kelvin()),
                Quantity.time(blue.seconds().value()));
        step.then(Phrase.of(
                "Lift it at once, let it cool, oil it. Do not touch what is to be coloured with bare hands."));
        step.figure("The colour comes after", blue.seconds());
        blue.grey().ifPresent(g -> step.figure("Gone grey after", g));
        route.temper().ifPresent(t -> hardness(step, t, blue, route.piece().hardness()));
        return step.hazards("sharp-hot", "fumes").findings(answer.findings()).done();
    }

    private static void hardness(StepDraft step, TemperPlan plan, HeatBlue blue, Optional<Band> wanted) {
        Steel steel = plan.steel();
        Temper temper = new Temper(plan.kelvin(), plan.secondsInAll());
        Temper heat = new Temper(blue.kelvin(), blue.seconds().value());
        Answer<Estimate> after = Tempering.hardness(steel, List.of(temper, heat));
        after.value().ifPresent(h -> {
            step.figure("Hardness when so coloured", h);
            wanted.filter(w -> h.value() < w.low())
                    .ifPresent(w -> step.finding(new Finding.Caution(
                            Phrase.of("This colour softens it to {}.", h.band()),
                            Phrase.of("It is a temper hotter than its own; wanted are {}.", w),
                            Phrase.of("Take an earlier colour such as straw, or another finish."))));
        });
    }
}
