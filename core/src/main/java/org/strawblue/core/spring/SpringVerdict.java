package org.strawblue.core.spring;

import java.util.List;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;

/**
 * What the search says of one spring.
 *
 * @param spring in the state that serves best, as it is or cut
 * @param probability that it works, given what the measurements leave open [1]
 * @param failures why it does not work even so; empty where it does
 * @param cautions what to mind where it does
 */
public record SpringVerdict(
        CompressionSpring spring, double probability, List<Phrase> failures, List<Finding> cautions) {

    public SpringVerdict {
        failures = List.copyOf(failures);
        cautions = List.copyOf(cautions);
    }

    /** Whether it keeps every limit when each measurement is taken as exact. */
    public boolean works() {
        return failures.isEmpty();
    }
}
