package org.strawblue.app.input;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.spring.EndType;

/** What people call the ends of a compression spring. */
public final class EndWords {

    private static final Map<String, EndType> ENDS = Map.of(
            "closed and ground", EndType.CLOSED_GROUND,
            "closed", EndType.CLOSED,
            "open", EndType.OPEN,
            "open and ground", EndType.OPEN_GROUND);

    private EndWords() {}

    public static Optional<EndType> find(String text) {
        return Lexicon.of("ends").find(text).map(ENDS::get);
    }

    public static List<String> all() {
        return List.copyOf(Lexicon.of("ends").words());
    }
}
