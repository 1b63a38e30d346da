package org.strawblue.core.evidence.judge;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.evidence.observe.Observation.Bite;
import org.strawblue.core.evidence.observe.Observation.State;
import org.strawblue.core.evidence.observe.Seen;

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
}
