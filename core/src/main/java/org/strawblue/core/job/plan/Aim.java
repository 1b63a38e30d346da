package org.strawblue.core.job.plan;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.steel.Duties;
import org.strawblue.core.steel.Duty;
import org.strawblue.core.steel.Grade;

/**
 * The hardness a part is to have.
 *
 * @param band [HRC]
 * @param reason why this one
 */
record Aim(Band band, Phrase reason) {

    /** What the job asks for; else what the duty asks for; else what serves most tools of this steel. */
    static Answer<Aim> of(WorkPiece piece, Grade grade) {
        if (piece.hardness().isPresent()) {
            return Answer.of(new Aim(
                    piece.hardness().get(),
                    Phrase.of("The job asks for {}.", piece.hardness().get())));
        }
        if (piece.duty().isPresent()) {
            return forDuty(piece.duty().get(), grade, List.of());
        }
        Optional<Duty> wear = Duties.find("wear");
        return wear.map(duty -> forDuty(duty, grade, List.of(neitherGiven(piece))))
                .orElseGet(() -> Answer.refused(neitherGiven(piece)));
    }

    private static Answer<Aim> forDuty(Duty duty, Grade grade, List<Finding> findings) {
        return Answer.of(duty, findings)
                .then(d -> Duties.hardness(d, grade.name()))
                .map(usual -> new Aim(
                        usual.band(),
                        Phrase.of(
                                "Usual for " + duty.key() + " in " + grade.name() + ": {} (common practice).",
                                usual.band())));
    }

    private static Finding neitherGiven(WorkPiece piece) {
        return new Finding.Caution(
                Phrase.of("Neither hardness nor duty is given for the " + piece.name() + "; it is planned for wear."),
                Phrase.of("A part that takes blows or flexes wants to be several points softer than one that rubs."),
                Phrase.of("Give its duty or its hardness in the job file."));
    }
}
