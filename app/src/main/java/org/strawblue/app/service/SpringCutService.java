package org.strawblue.app.service;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.Cut;
import org.strawblue.core.spring.Cuts;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.SpringSearch;

/** What a spring becomes when it is cut. */
public final class SpringCutService {

    private SpringCutService() {}

    /**
     * Every allowed cut to a new end: what it leaves, and in a pocket whether it works.
     *
     * @param end the one new end to be shown; absent for all
     */
    public static Sheet cut(MeasuredSpring measured, Optional<Pocket> pocket, Optional<EndType> end) {
        OptionalDouble temperature = pocket.map(Pocket::temperature).orElse(OptionalDouble.empty());
        CompressionSpring whole = CompressionSpring.of(measured, Optional.empty(), temperature);
        Sheet.Builder sheet = Sheet.titled("Cutting " + measured.name());
        sheet.add("rate", "Rate as it is", whole.rate())
                .add("free_length", "Free length as it is", whole.freeLength())
                .add("stress_at_solid", "Stress when solid", whole.stressAtSolid());
        int shown = 0;
        for (Cut cut : Cuts.of(whole.nominal())) {
            CompressionSpring made = CompressionSpring.of(measured, Optional.of(cut), temperature);
            boolean wanted = end.isEmpty() || cut.newEnd() == end.get();
            if (wanted
                    && (pocket.isEmpty()
                            ? !cut.atFirst() && whole(cut)
                            : SpringSearch.worksAsItIs(made, pocket.get()))) {
                shown++;
                sheet.add(new Entry.Words("cut " + shown, label(cut), words(made, pocket)));
            }
        }
        return sheet.findings(findings(pocket, shown)).build();
    }

    /** Without a pocket whole coils are enough to see how it runs. */
    private static boolean whole(Cut cut) {
        return cut.removed() == Math.rint(cut.removed());
    }

    private static String label(Cut cut) {
        String which = cut.atFirst() ? ", first end" : "";
        String end = switch (cut.newEnd()) {
            case OPEN -> "left open";
            case OPEN_GROUND -> "ground flat";
            case CLOSED -> "closed";
            case CLOSED_GROUND -> "closed and ground";
        };
        return end + which;
    }

    private static Phrase words(CompressionSpring made, Optional<Pocket> pocket) {
        Coil coil = made.nominal();
        Phrase becomes = Phrase.of(
                "{} off, {} left: {}, {} long, solid {}",
                Quantity.number(made.cut().orElseThrow().removed()),
                Quantity.number(coil.total()),
                made.rate().quantity(),
                Quantity.length(coil.free()),
                Quantity.length(coil.solid()));
        return pocket.map(p -> Phrases.joined(
                        "; ",
                        becomes,
                        Phrase.of(
                                "{} at rest, {} at full travel, works with a chance of {}",
                                made.force(p.lengthAtRest()).quantity(),
                                made.force(p.lengthAtFullTravel()).quantity(),
                                Quantity.fraction(SpringSearch.chance(made, p, false)))))
                .orElse(becomes);
    }

    private static List<Finding> findings(Optional<Pocket> pocket, int shown) {
        Finding tools = new Finding.Caution(
                Phrase.of("The cut-off end flies, and the new one is a knife."),
                Phrase.of("Hard wire snaps under the cutter, and what is cut off leaps away."),
                Phrase.of("Goggles on; cut under a cloth or with the piece held; round the tip with a stone."));
        Finding cool = new Finding.Note(
                Phrase.of("Grind the new end cool, and bend only the last coil down."),
                Phrase.of("Where the wire shows a temper colour it has lost strength, and a hot working coil sets."),
                Phrase.of("Dip it often; if the last coil must be heated to bend, keep the heat out of the next."));
        return pocket.isPresent() && shown == 0
                ? List.of(new Finding.Stop(
                        Phrase.of("No cut of this spring works in this pocket."),
                        Phrase.of("A cut spring is stiffer and shorter: at the same length it pushes less."),
                        Phrase.of("Ask  spring check  for what stops it, or  spring find  with a drawer.")))
                : List.of(tools, cool);
    }
}
