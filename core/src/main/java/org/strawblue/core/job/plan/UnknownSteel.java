package org.strawblue.core.job.plan;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.quantity.Phrase;

/** What to do with a part whose steel nobody knows: find out first. */
final class UnknownSteel {

    private UnknownSteel() {}

    static PartRoute route(Job job, WorkPiece piece) {
        StepDraft step = new StepDraft(Stage.HARDEN, piece.name())
                .lead("Find out what steel it is before you make the " + piece.name()
                        + ": harden a piece of the same bar.")
                .hazards("sharp-hot", "oil-fire", "oil-water", "water-spit", "brittle", "file-test")
                .reason(
                        "Saw off a piece no thicker than a pencil, heat it a shade past where a magnet lets go, and quench it in"
                                + " oil. If a new file skates over it, it hardens in oil.")
                .reason(
                        "If the file bites, heat it again and quench it in water. If it skates now, it is a water-hardening"
                                + " carbon steel; if it still bites, it is mild steel or a steel that needs a kiln.")
                .finding(finding(piece));
        return new PartRoute(
                piece,
                List.of(Planner.plain(piece.name() + ": steel not known, so no temperature is given.")),
                List.of(step.done()),
                List.of(),
                List.of(),
                Optional.empty());
    }

    private static Finding finding(WorkPiece piece) {
        return new Finding.Caution(
                Phrase.of("The steel of the " + piece.name()
                        + " is not known; nothing about its heat treatment is computed."),
                Phrase.of(
                        "Hardening heats of common tool steels lie hundreds of degrees apart, and one quench's steel cracks in"
                                + " another's."),
                Phrase.of("Name the steel, or buy a bar that is marked: O1 is the easiest for a first tool."));
    }
}
