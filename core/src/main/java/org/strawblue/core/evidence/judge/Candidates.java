package org.strawblue.core.evidence.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.evidence.observe.Observation.Bite;
import org.strawblue.core.evidence.observe.Observation.State;
import org.strawblue.core.evidence.observe.Seen;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** Looks that can still be taken of a part that is cold again. */
public final class Candidates {

    private Candidates() {}

    /** Files, dents and a coupon: what is left when the heat is over. */
    public static List<NextLook.Candidate> of(Judgement judged) {
        List<NextLook.Candidate> all = new ArrayList<>();
        double file = Looks.number("file-effort");
        all.add(file(Files.commonLevel(), false, State.QUENCHED, Looks.number("coupon-effort")));
        all.add(file(Files.commonLevel(), false, State.TEMPERED, file));
        judged.hardness().ifPresent(h -> {
            double step = Looks.hrc("file-step");
            for (double level = Looks.hrc("file-lowest"); level <= Looks.hrc("file-highest"); level += step) {
                all.add(file(level, true, State.TEMPERED, file));
            }
            all.add(new NextLook.Candidate(
                    new Observation.Indent(
                            Looks.length("usual-ball"),
                            Looks.length("usual-dent"),
                            Looks.length("usual-dent"),
                            h.value(),
                            State.TEMPERED,
                            Seen.SOME_TIME),
                    Looks.number("indent-effort")));
        });
        all.removeIf(c -> judged.worth().stream().anyMatch(w -> Repeats.alike(w.observation(), c.observation())));
        return all;
    }

    private static NextLook.Candidate file(double level, boolean graded, State state, double effort) {
        return new NextLook.Candidate(new Observation.File(level, graded, Bite.BARELY, state, Seen.SOME_TIME), effort);
    }

    /** The look as something to do. */
    public static String words(Observation look) {
        if (look instanceof Observation.File o) {
            String which = o.graded() ? "the " + Math.round(o.level()) + " HRC file" : "a good common file";
            return "try " + which
                    + (o.state() == State.QUENCHED
                            ? " on a coupon quenched with the part and not tempered"
                            : " on the part, on bright metal below any scale");
        }
        return look instanceof Observation.Indent
                ? "compare dents with a piece of known hardness"
                : "look again by another means";
    }

    /** A sentence about a look that begins with the figure it had. */
    public static Phrase with(Observation look, String sentence, Amount... amounts) {
        Optional<Amount> figure = figure(look);
        if (figure.isEmpty()) {
            return Phrase.of(sentence, amounts);
        }
        List<Amount> all = new ArrayList<>(List.of(amounts));
        all.add(0, figure.get());
        return new Phrase("{}: " + sentence, all);
    }

    private static Optional<Amount> figure(Observation look) {
        if (look instanceof Observation.Crayon o) {
            return Optional.of(Quantity.temperature(o.rating()));
        }
        if (look instanceof Observation.Infrared o) {
            return Optional.of(Quantity.temperature(o.reading()));
        }
        if (look instanceof Observation.PartReads o) {
            return Optional.of(Quantity.temperature(o.reading()));
        }
        if (look instanceof Observation.SourceReads o) {
            return Optional.of(Quantity.temperature(o.reading()));
        }
        if (look instanceof Observation.File o && o.graded()) {
            return Optional.of(Quantity.hardness(o.level()));
        }
        return look instanceof Observation.Tester o ? Optional.of(Quantity.hardness(o.reading())) : Optional.empty();
    }
}
