package org.strawblue.core.spring.find;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.SpringSearch;
import org.strawblue.core.spring.SpringVerdict;

/** A spring that is slack or soft as it is, on a shim that makes its pocket shorter. */
final class Shims {

    private static final double STEP = Practice.OF.si("shim_step", Dimension.LENGTH);
    private static final double MOST = Practice.OF.number("shim_most");

    private Shims() {}

    /** The thickness with the best chance; absent where none makes it work. */
    static Optional<Candidate> of(Pocket pocket, SpringVerdict failed) {
        MeasuredSpring spring = failed.spring().spring();
        double room =
                pocket.lengthAtFullTravel() - failed.spring().solidLength().value();
        double most = Math.min(room, MOST * pocket.lengthAtRest());
        CompressionSpring asItIs = CompressionSpring.of(spring, Optional.empty(), pocket.temperature());
        double best = 0;
        double chance = 0;
        for (double shim = STEP; shim <= most; shim += STEP) {
            Pocket on = shorter(pocket, shim);
            double next = SpringSearch.worksAsItIs(asItIs, on) ? SpringSearch.chance(asItIs, on, true) : 0;
            if (next > chance) {
                best = shim;
                chance = next;
            }
        }
        return chance > 0 ? Optional.of(candidate(asItIs, pocket, best)) : Optional.empty();
    }

    private static Candidate candidate(CompressionSpring spring, Pocket pocket, double shim) {
        Pocket on = shorter(pocket, shim);
        return new Candidate(
                Candidate.Kind.SHIMMED,
                List.of(spring.spring()),
                Optional.empty(),
                Phrase.of("as it is, on a shim of {}", Quantity.length(shim)),
                SpringSearch.chance(spring, on, false),
                List.of(),
                SpringSearch.cautions(spring, on));
    }

    static Pocket shorter(Pocket pocket, double by) {
        return Knob.withLength(pocket, pocket.lengthAtRest() - by);
    }
}
