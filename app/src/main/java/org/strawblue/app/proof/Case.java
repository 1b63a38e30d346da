package org.strawblue.app.proof;

import java.util.Set;
import org.strawblue.core.source.Standing;

/**
 * One check case.
 *
 * @param what the question in a few words
 * @param unit of the expected number; empty for a word
 * @param source key into the bibliography
 * @param control whether the operation is deliberately wrong, so that the case proves the check can fail
 */
public record Case(
        String id,
        String what,
        String operation,
        Inputs inputs,
        Expected expected,
        String unit,
        String source,
        Standing standing,
        boolean control) {

    private static final Set<String> OWN = Set.of("strawblue", "from-memory", "assumed", "common-practice");

    /** Whether the expected value comes from somewhere that can be looked up outside this project. */
    public boolean outside() {
        return !OWN.contains(source);
    }
}
