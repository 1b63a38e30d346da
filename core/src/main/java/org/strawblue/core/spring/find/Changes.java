package org.strawblue.core.spring.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.SpringSearch;

/**
 * The smallest change of each thing about a pocket after which some spring works: steps that grow by half, then halved until
 * the change is known to a hundredth of itself.
 */
final class Changes {

    private static final double FIRST = Practice.OF.number("change_first");
    private static final double GROWS = Practice.OF.number("change_grows");
    private static final double MOST = Practice.OF.number("change_most");
    private static final int HALVINGS = 7;

    private Changes() {}

    /** The smallest first. */
    static List<Change> of(Pocket pocket, List<MeasuredSpring> drawer) {
        List<Change> all = new ArrayList<>();
        for (Knob knob : Knob.values()) {
            least(pocket, drawer, knob).ifPresent(all::add);
        }
        all.sort(Comparator.comparingDouble(Change::share));
        return all;
    }

    private static Optional<Change> least(Pocket pocket, List<MeasuredSpring> drawer, Knob knob) {
        double below = 0;
        for (double share = FIRST; share <= MOST; share *= GROWS) {
            Optional<Change> works = works(pocket, drawer, knob, share);
            if (works.isPresent()) {
                return Optional.of(narrowed(pocket, drawer, knob, below, works.get()));
            }
            below = share;
        }
        return Optional.empty();
    }

    private static Change narrowed(Pocket pocket, List<MeasuredSpring> drawer, Knob knob, double below, Change found) {
        Change best = found;
        double low = below;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + best.share()) / 2;
            Optional<Change> works = works(pocket, drawer, knob, middle);
            if (works.isPresent()) {
                best = works.get();
            } else {
                low = middle;
            }
        }
        return best;
    }

    private static Optional<Change> works(Pocket pocket, List<MeasuredSpring> drawer, Knob knob, double share) {
        return knob.turned(pocket, share)
                .flatMap(changed -> SpringSearch.firstThatWorks(changed, drawer)
                        .map(spring -> new Change(knob.words(changed), share, changed, spring)));
    }
}
