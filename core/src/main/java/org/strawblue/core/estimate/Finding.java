package org.strawblue.core.estimate;

import org.strawblue.core.quantity.Phrase;

/** A notice that travels with a result: what was found, why it is so, what to do about it. */
public sealed interface Finding {

    Phrase what();

    Phrase why();

    Phrase remedy();

    /** Worth knowing; nothing need be done. */
    record Note(Phrase what, Phrase why, Phrase remedy) implements Finding {}

    /** The work may go on, with care. */
    record Caution(Phrase what, Phrase why, Phrase remedy) implements Finding {}

    /** This cannot be done, or cannot be answered. */
    record Stop(Phrase what, Phrase why, Phrase remedy) implements Finding {}
}
