package org.strawblue.core.job.plan;

import java.util.List;
import org.strawblue.core.assembly.Locking;
import org.strawblue.core.assembly.Removal;
import org.strawblue.core.assembly.Slide;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.fit.Limits;
import org.strawblue.core.job.AssemblyWish;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.Step;
import org.strawblue.core.quantity.Phrase;

/** Locking the screws, when all works. */
final class LockSteps {

    private LockSteps() {}

    static void addTo(List<Step> steps, Job job) {
        for (AssemblyWish.LockedScrew screw : job.assembly().locks()) {
            steps.add(step(screw, job.assembly().slides()));
        }
    }

    private static Step step(AssemblyWish.LockedScrew screw, List<AssemblyWish.Slide> slides) {
        StepDraft step = new StepDraft(Stage.ASSEMBLE, screw.name().replace("{}", "{ }")).hazards("locking");
        Answer<Locking> answer = Locking.of(screw.lock());
        String which =
                screw.lock().thread().name() + ", " + screw.lock().strength().name() + " strength";
        if (answer.value().isEmpty()) {
            return step.lead("Do not lock the " + screw.name() + " with fluid.")
                    .findings(answer.findings())
                    .done();
        }
        Locking locking = answer.value().get();
        step.lead(
                "Set the " + screw.name() + ", work the mechanism, then lock it (" + which
                        + "): {} drops in the middle of" + " its thread.",
                locking.drops().band());
        step.then(Phrase.of(
                "Degrease both threads first; wipe off what comes out; work the slide now and then until it is"
                        + " set."));
        step.figure("May be handled after", locking.fixture())
                .figure("Full strength after", locking.fullCure())
                .figure("Breaks loose at", locking.breakLoose())
                .figure("The screw itself yields at", locking.twistsOff());
        answer.findings().stream().skip(1).forEach(step::finding); // the first is the hazard's own words
        for (AssemblyWish.Slide slide : slides) {
            step.findings(new Slide(Limits.clearance(
                            slide.hole().limits().orElseThrow(),
                            slide.shaft().limits().orElseThrow()))
                    .besideLocking());
        }
        if (screw.lock().strength().hot()) {
            step.findings(Removal.fumes());
        }
        return step.done();
    }
}
