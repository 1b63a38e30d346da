package org.strawblue.core.job.plan;

import java.util.Optional;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.Step;

/** Putting it together, where there is something to put together. */
final class AssembleStep {

    private AssembleStep() {}

    static Optional<Step> of(Job job) {
        if (job.pockets().isEmpty() && job.parts().size() < 2 && job.assembly().isEmpty()) {
            return Optional.empty();
        }
        StepDraft step = new StepDraft(Stage.ASSEMBLE, "")
                .lead("Try it dry and without the spring first: every part must move by hand through its whole travel.")
                .reason("Clean off scale, lapping paste and burrs; a grain of either locks a close fit.")
                .reason(
                        "Then fit the spring, work it twenty times, and measure its length again: one that has shortened was"
                                + " pressed too far.");
        if (!job.pockets().isEmpty()) {
            step.hazards("spring-loose");
        }
        if (!job.assembly().isEmpty()) {
            GoesTogether.tell(step, job.assembly());
        }
        return Optional.of(step.reason("Oil it lightly; no heat on a tempered part from now on.")
                .hazards("life")
                .done());
    }
}
