package org.strawblue.app.input;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading: a value, or the problems that prevented it, or (in a table, where a bad row does not stop the
 * rest) both.
 *
 * @param notes what was assumed in reading, to be told
 */
public record Read<T>(Optional<T> value, List<Problem> problems, List<String> notes) {

    public Read {
        problems = List.copyOf(problems);
        notes = List.copyOf(notes);
    }

    /** Nothing came of it. */
    static <T> Read<T> failed(Problem... problems) {
        return new Read<>(Optional.empty(), List.of(problems), List.of());
    }

    public boolean clean() {
        return problems.isEmpty();
    }
}
