package org.strawblue.core.source;

import java.util.Arrays;

/** How far a number may be believed, best first. */
public enum Standing {
    PUBLISHED("published"),
    HANDBOOK("handbook"),
    FITTED("fitted"),
    COMMON_PRACTICE("common-practice"),
    FROM_MEMORY("from-memory"),
    ASSUMED("assumed");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    /** The word used in data files. */
    public String word() {
        return word;
    }

    /** Whether the user must be told that a result rests on this. */
    public boolean weak() {
        return this == FROM_MEMORY || this == ASSUMED;
    }

    /** @throws IllegalArgumentException where the word is none of ours */
    public static Standing of(String word) {
        return Arrays.stream(values())
                .filter(s -> s.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("unknown standing '" + word + "'"));
    }
}
