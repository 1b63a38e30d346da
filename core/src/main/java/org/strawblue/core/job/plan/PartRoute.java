package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.HardeningPlan;
import org.strawblue.core.job.Item;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.Step;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Steel;

/**
 * The way of one part through the shop.
 *
 * @param temper absent where the part cannot be tempered as asked
 */
record PartRoute(
        WorkPiece piece,
        List<Phrase> summary,
        List<Step> steps,
        List<Finding> findings,
        List<Item> items,
        Optional<TemperPlan> temper) {

    static PartRoute of(Job job, WorkPiece piece) {
        if (piece.steel().isEmpty()) {
            return UnknownSteel.route(job, piece);
        }
        List<Finding> findings = new ArrayList<>();
        PartShape shape = piece.shape().orElseGet(() -> {
            findings.add(noShape(piece));
            return Practice.usualShape();
        });
        return new Writer(new Brief(job, piece, piece.steel().get(), shape), findings).route();
    }

    List<Step> of(Stage stage) {
        return steps.stream().filter(s -> s.stage() == stage).toList();
    }

    private static Finding noShape(WorkPiece piece) {
        return new Finding.Caution(
                Phrase.of(
                        "The size of the " + piece.name() + " is not known; it is planned as a round bar of {}.",
                        Quantity.length(Practice.usualShape().section())),
                Phrase.of(
                        "Section decides how deep it hardens, how long it soaks and how fast it must reach the bath."),
                Phrase.of("Measure it and give its shape."));
    }

    private static final class Writer {
        private final Brief brief;
        private final List<Finding> findings;
        private final List<Step> steps = new ArrayList<>();
        private final List<Item> items = new ArrayList<>();
        private final List<Phrase> summary = new ArrayList<>();

        Writer(Brief brief, List<Finding> findings) {
            this.brief = brief;
            this.findings = findings;
        }

        PartRoute route() {
            Answer<HardeningPlan> hardening = HardenStep.plan(brief);
            if (hardening.value().isEmpty()) {
                findings.addAll(hardening.findings());
                summary.add(Planner.plain("The " + brief.piece().name() + " of "
                        + brief.grade().name() + " cannot be hardened as asked."));
                return done(Optional.empty());
            }
            HardeningPlan plan = hardening.value().get();
            SizeSteps sizes = new SizeSteps(brief, HardenStep.heating(brief, plan));
            steps.add(sizes.before());
            steps.add(HardenStep.of(brief, plan, hardening.findings(), items).done());
            steps.add(ProveSteps.afterQuench(brief, plan.quenched().surface()));
            Optional<TemperPlan> temper = temper(plan);
            steps.add(sizes.after());
            return done(temper);
        }

        private Optional<TemperPlan> temper(HardeningPlan hardening) {
            Answer<Aim> aim = Aim.of(brief.piece(), brief.grade());
            findings.addAll(aim.findings());
            if (aim.value().isEmpty()) {
                return Optional.empty();
            }
            Answer<TemperPlan> plan = TemperPlan.of(brief, steel(), aim.value().get());
            if (plan.value().isEmpty()) {
                findings.addAll(plan.findings());
                return Optional.empty();
            }
            write(plan.value().get(), plan.findings(), aim.value().get());
            return plan.value();
        }

        private Steel steel() {
            Steel steel = brief.steel();
            return brief.piece().asQuenched().isPresent()
                    ? steel.asQuenched(brief.piece().asQuenched().getAsDouble())
                    : steel;
        }

        private void write(TemperPlan plan, List<Finding> found, Aim aim) {
            StepDraft step = TemperStep.of(brief, plan, aim).findings(found);
            items.addAll(Watch.over(step, plan, brief.job().shop().indicators()));
            steps.add(step.done());
            steps.add(ProveSteps.afterTemper(brief, plan.hardness(), aim.band()));
            Estimate hardness = plan.hardness();
            summary.add(Phrase.of(
                    brief.piece().name() + ": " + brief.grade().name() + ", {} after {} at {}",
                    hardness.band(),
                    Quantity.time(plan.secondsInAll()),
                    Quantity.temperature(plan.kelvin())));
        }

        private PartRoute done(Optional<TemperPlan> temper) {
            return new PartRoute(brief.piece(), summary, steps, findings, items, temper);
        }
    }
}
