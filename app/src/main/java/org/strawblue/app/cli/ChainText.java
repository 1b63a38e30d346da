package org.strawblue.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.app.input.ChainPieces;
import org.strawblue.app.input.Size;
import org.strawblue.core.fit.Chain;
import org.strawblue.core.fit.Limits;
import org.strawblue.core.fit.Link;
import org.strawblue.core.fit.Spread;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/** Reads a chain of sizes of the command line. */
final class ChainText {

    private ChainText() {}

    static Optional<Chain> read(Question question, String option, String text) {
        List<Link> links = new ArrayList<>();
        List<ChainPieces.Piece> pieces = ChainPieces.of(text);
        for (ChainPieces.Piece piece : pieces) {
            limits(question, option, piece.text())
                    .ifPresent(b -> links.add(new Link(piece.text(), piece.weight(), new Spread.Within(b))));
        }
        return links.size() == pieces.size() ? Optional.of(new Chain("gap", links)) : Optional.empty();
    }

    private static Optional<Band> limits(Question question, String option, String piece) {
        int before = question.problems().size();
        Optional<Size> size = question.size(option, piece);
        if (size.isEmpty() && question.problems().size() == before) {
            question.missing(option, piece, "a size with its limits, such as 8 +0/-0.1 mm");
        }
        return size.flatMap(s -> s.fit().isPresent()
                ? question.named(
                        option, piece, t -> Limits.of(s.nominal(), s.fit().get()))
                : Optional.of(s.limits().orElse(new Band(Dimension.LENGTH, s.nominal(), s.nominal()))));
    }
}
