package org.strawblue.core.spring.find;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.SpringVerdict;

/**
 * One way to furnish a pocket.
 *
 * @param springs of the drawer that it takes; for one to be wound, the spring it would be
 * @param verdict of the search for one spring; absent for two together
 * @param how it is used, in a few words
 * @param probability that it works, given what the measurements leave open [1]
 * @param failures why it does not work; empty where it does
 */
public record Candidate(
        Kind kind,
        List<MeasuredSpring> springs,
        Optional<SpringVerdict> verdict,
        Phrase how,
        double probability,
        List<Phrase> failures,
        List<Finding> cautions) {

    /** In the order of what is least trouble. */
    public enum Kind {
        AS_IT_IS,
        SHIMMED,
        CUT,
        STACKED,
        NESTED,
        WOUND
    }

    public Candidate {
        springs = List.copyOf(springs);
        failures = List.copyOf(failures);
        cautions = List.copyOf(cautions);
    }

    public boolean works() {
        return failures.isEmpty();
    }

    /** The names of its springs. */
    public String name() {
        return String.join(" + ", springs.stream().map(MeasuredSpring::name).toList());
    }
}
