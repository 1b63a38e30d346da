package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.fit.FinishMethod;
import org.strawblue.core.fit.Finishing;
import org.strawblue.core.fit.FinishingPlan;
import org.strawblue.core.fit.FinishingStep;
import org.strawblue.core.fit.Heating;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.Step;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** What to do to the sizes of a part before the fire and after the temper. */
final class SizeSteps {

    private final Brief brief;
    private final List<Answer<FinishingPlan>> plans;

    SizeSteps(Brief brief, Heating heating) {
        this.brief = brief;
        this.plans = brief.piece().features().stream()
                .map(f -> Finishing.plan(f, brief.grade(), heating, FinishMethod.LAP))
                .toList();
    }

    Step before() {
        StepDraft step = new StepDraft(Stage.TURN, brief.piece().name()).hazards("machine");
        List<FinishingStep> todo = new ArrayList<>();
        values().forEach(p -> todo.addAll(p.stepsBefore()));
        lead(step, todo, "Make the " + brief.piece().name() + " to its drawing.");
        values().forEach(p -> step.figure("Growth, " + p.feature().name(), p.change()));
        step.findings(findings());
        return step.reason("Radius every inside corner and chamfer every edge: cracks start where the section jumps.")
                .done();
    }

    Step after() {
        StepDraft step = new StepDraft(Stage.FINISH, brief.piece().name());
        List<FinishingStep> todo = new ArrayList<>();
        values().forEach(p -> todo.addAll(p.stepsAfter()));
        lead(step, todo, "Brighten the " + brief.piece().name() + "; no size is left to finish.");
        if (!todo.isEmpty()) {
            step.hazards("grind");
        }
        return step.done();
    }

    private List<FinishingPlan> values() {
        return plans.stream().flatMap(p -> p.value().stream()).toList();
    }

    /** Alike but for their figure, the one with the greatest speaks for all. */
    private Collection<Finding> findings() {
        Map<List<Object>, Finding> gravest = new LinkedHashMap<>();
        plans.stream()
                .flatMap(p -> p.findings().stream())
                .forEach(f -> gravest.merge(
                        List.of(f.getClass(), f.what().template(), f.remedy()),
                        f,
                        (a, b) -> size(a) < size(b) ? b : a));
        return gravest.values();
    }

    private static double size(Finding finding) {
        return finding.what().amounts().stream()
                .filter(Quantity.class::isInstance)
                .map(Quantity.class::cast)
                .mapToDouble(Quantity::si)
                .findFirst()
                .orElse(0);
    }

    private static void lead(StepDraft step, List<FinishingStep> todo, String nothing) {
        if (todo.isEmpty()) {
            step.lead(nothing);
            return;
        }
        step.lead(todo.get(0).lead());
        todo.stream().skip(1).map(FinishingStep::lead).forEach(step::then);
        step.reasons(todo.stream()
                .map(FinishingStep::reason)
                .filter(SizeSteps::says)
                .distinct()
                .toList());
    }

    private static boolean says(Phrase phrase) {
        return !phrase.template().isBlank();
    }
}
