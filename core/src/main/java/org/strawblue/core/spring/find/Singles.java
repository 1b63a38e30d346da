package org.strawblue.core.spring.find;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.Cut;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.SpringVerdict;

/** One spring, as it is or cut. */
final class Singles {

    private Singles() {}

    static Candidate of(SpringVerdict verdict) {
        Optional<Cut> cut = verdict.spring().cut();
        return new Candidate(
                cut.isPresent() ? Candidate.Kind.CUT : Candidate.Kind.AS_IT_IS,
                List.of(verdict.spring().spring()),
                Optional.of(verdict),
                cut.map(c -> how(c, verdict.spring().nominal().total())).orElse(Phrase.of("as it is")),
                verdict.probability(),
                verdict.failures(),
                verdict.cautions());
    }

    private static Phrase how(Cut cut, double left) {
        return Phrase.of(
                "cut by {} coils to {}, its new end " + words(cut.newEnd()),
                Quantity.number(cut.removed()),
                Quantity.number(left));
    }

    static String words(EndType end) {
        return switch (end) {
            case OPEN -> "left open";
            case OPEN_GROUND -> "ground flat";
            case CLOSED -> "closed";
            case CLOSED_GROUND -> "closed and ground";
        };
    }
}
