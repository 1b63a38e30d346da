package org.strawblue.core.estimate;

import org.jspecify.annotations.Nullable;
import org.strawblue.core.quantity.Phrase;

/** A notice that travels with a result: what was found, why it is so, what to do about it. */
public sealed interface Finding {

    Phrase what();

    Phrase why();

    Phrase remedy();

    /** Whether the other one says the same, whatever its gravity. */
    default boolean sameWords(Finding other) {
        return what().equals(other.what()) && why().equals(other.why()) && remedy().equals(other.remedy());
    }

    /** Worth knowing; nothing need be done. */
    record Note(Phrase what, Phrase why, Phrase remedy) implements Finding {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Note finding && sameWords(finding);
        }

        @Override
        public int hashCode() {
            return what.hashCode();
        }
    }

    /** The work may go on, with care. */
    record Caution(Phrase what, Phrase why, Phrase remedy) implements Finding {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Caution finding && sameWords(finding);
        }

        @Override
        public int hashCode() {
            return what.hashCode();
        }
    }

    /** This cannot be done, or cannot be answered. */
    record Stop(Phrase what, Phrase why, Phrase remedy) implements Finding {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Stop finding && sameWords(finding);
        }

        @Override
        public int hashCode() {
            return what.hashCode();
        }
    }
}
