package org.strawblue.core.spring.find;

import java.util.List;
import org.strawblue.core.estimate.Finding;

/**
 * What a drawer offers for a pocket.
 *
 * @param pocket what was found about the pocket before any spring was looked at; where it holds a stop, nothing was searched
 * @param ranked the likeliest to work first, those that do not work last, each with its reasons
 * @param changes of the pocket that would help, the smallest first; none where something in the drawer works
 * @param passedOver how many springs of a very large drawer were judged in bulk only and do not work
 */
public record Found(List<Finding> pocket, List<Candidate> ranked, List<Change> changes, int passedOver) {

    public Found {
        pocket = List.copyOf(pocket);
        ranked = List.copyOf(ranked);
        changes = List.copyOf(changes);
    }

    /** Whether a spring of the drawer works, alone or with another. */
    public boolean anyInDrawer() {
        return ranked.stream().anyMatch(c -> c.works() && c.kind() != Candidate.Kind.WOUND);
    }
}
