package org.strawblue.core.evidence.diagnosis;

/**
 * Something to try, and what may be expected of it.
 *
 * @param bits information to be expected [bit]: one bit halves what is open
 */
public record NextTest(Clue clue, double bits) {

    double worth() {
        return bits / clue.effort();
    }
}
