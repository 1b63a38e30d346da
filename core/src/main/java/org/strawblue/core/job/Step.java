package org.strawblue.core.job;

import java.util.List;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;

/**
 * One step at the bench.
 *
 * @param part the part's name, or empty where the step concerns the assembly
 * @param lead the one instruction, with its band
 * @param then further things to do in the same step, in order
 * @param figures the numbers under it
 * @param reasons why, for whoever asks
 */
public record Step(
        Stage stage,
        String part,
        Phrase lead,
        List<Phrase> then,
        List<Figure> figures,
        List<Phrase> reasons,
        List<Hazard> hazards,
        List<Finding> findings,
        List<Picture> pictures) {

    public Step {
        then = List.copyOf(then);
        figures = List.copyOf(figures);
        reasons = List.copyOf(reasons);
        hazards = List.copyOf(hazards);
        findings = List.copyOf(findings);
        pictures = List.copyOf(pictures);
    }

    /** The same step with other words beside its instructions and figures. */
    public Step with(List<Phrase> otherReasons, List<Hazard> otherHazards, List<Finding> otherFindings) {
        return new Step(stage, part, lead, then, figures, otherReasons, otherHazards, otherFindings, pictures);
    }
}
