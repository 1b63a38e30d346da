package org.strawblue.core.steel;

import java.util.Arrays;

/** How a steel takes one kind of quench. */
public enum QuenchFit {
    MADE_FOR("made-for"),
    /** Hardens thin sections only. */
    THIN("thin"),
    /** More severe than the steel needs: warps, may crack. */
    HARSH("harsh"),
    /** A real risk of cracking. */
    CRACKS("cracks"),
    /** Likely too slow. */
    SLACK("slack"),
    /** Breaks it, or does not harden it at all. */
    NEVER("never");

    private final String word;

    QuenchFit(String word) {
        this.word = word;
    }

    /** @throws IllegalArgumentException where the word is none of ours */
    static QuenchFit of(String word) {
        return Arrays.stream(values())
                .filter(f -> f.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("unknown fit '" + word + "'"));
    }
}
