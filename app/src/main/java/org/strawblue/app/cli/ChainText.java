package org.strawblue.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.strawblue.app.input.Size;
import org.strawblue.core.fit.Chain;
import org.strawblue.core.fit.Limits;
import org.strawblue.core.fit.Link;
import org.strawblue.core.fit.Spread;
import org.strawblue.core.quantity.Band;

/** Reads "12 ±0.05 mm - 8 +0/-0.1 mm": sizes with limits, a plus or minus that stands alone between them. */
final class ChainText {

    private static final Pattern SIGN = Pattern.compile("(?:^\\s*|\\s+)([+−-])\\s+");

    private ChainText() {}

    static Optional<Chain> read(Question question, String option, String text) {
        List<Link> links = new ArrayList<>();
        Matcher sign = SIGN.matcher(text);
        int from = 0;
        double weight = 1;
        boolean sound = true;
        while (true) {
            boolean more = sign.find();
            String piece =
                    text.substring(from, more ? sign.start() : text.length()).strip();
            if (!piece.isEmpty() || from > 0 || !more) {
                sound &= link(question, option, piece, weight, links);
            }
            if (!more) {
                return sound ? Optional.of(new Chain("gap", links)) : Optional.empty();
            }
            weight = sign.group(1).equals("+") ? 1 : -1;
            from = sign.end();
        }
    }

    private static boolean link(Question question, String option, String piece, double weight, List<Link> links) {
        int before = question.problems().size();
        Optional<Size> size = question.size(option, piece);
        Optional<Band> limits = size.flatMap(s -> limits(question, option, piece, s));
        if (size.isEmpty() && question.problems().size() == before) {
            question.missing(option, piece, "a size with its limits, such as 8 +0/-0.1 mm");
        }
        limits.ifPresent(b -> links.add(new Link(piece, weight, new Spread.Within(b))));
        return limits.isPresent();
    }

    private static Optional<Band> limits(Question question, String option, String piece, Size size) {
        if (size.fit().isPresent()) {
            return question.named(
                    option, piece, t -> Limits.of(size.nominal(), size.fit().get()));
        }
        Band exact = new Band(org.strawblue.core.quantity.Dimension.LENGTH, size.nominal(), size.nominal());
        return Optional.of(size.limits().orElse(exact));
    }
}
