package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.Figure;
import org.strawblue.core.job.Hazard;
import org.strawblue.core.job.Hazards;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.Step;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Phrase;

/** A step while it is being written. */
final class StepDraft {

    private final Stage stage;
    private final String part;
    private Phrase lead = Phrase.of("");
    private final List<Phrase> then = new ArrayList<>();
    private final List<Figure> figures = new ArrayList<>();
    private final List<Phrase> reasons = new ArrayList<>();
    private final List<Hazard> hazards = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Picture> pictures = new ArrayList<>();

    StepDraft(Stage stage, String part) {
        this.stage = stage;
        this.part = part;
    }

    StepDraft lead(String template, Amount... amounts) {
        lead = Phrase.of(template, amounts);
        return this;
    }

    StepDraft lead(Phrase phrase) {
        lead = phrase;
        return this;
    }

    StepDraft then(Phrase phrase) {
        then.add(phrase);
        return this;
    }

    StepDraft figure(String label, Estimate estimate) {
        figures.add(new Figure(label, estimate));
        return this;
    }

    StepDraft reason(String template, Amount... amounts) {
        reasons.add(Phrase.of(template, amounts));
        return this;
    }

    StepDraft reasons(List<Phrase> more) {
        reasons.addAll(more);
        return this;
    }

    StepDraft hazards(String... keys) {
        for (Hazard hazard : Hazards.of(keys)) {
            if (hazards.stream().noneMatch(h -> h.key().equals(hazard.key()))) {
                hazards.add(hazard);
            }
        }
        return this;
    }

    StepDraft finding(Finding finding) {
        if (!findings.contains(finding)) {
            findings.add(finding);
        }
        return this;
    }

    StepDraft findings(Collection<Finding> more) {
        more.forEach(this::finding);
        return this;
    }

    StepDraft picture(Picture picture) {
        pictures.add(picture);
        return this;
    }

    Step done() {
        return new Step(stage, part, lead, then, figures, reasons, hazards, findings, pictures);
    }
}
