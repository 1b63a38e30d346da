package org.strawblue.app.input;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What came of reading one text: a value, "not known", or a fault. */
public sealed interface Reading<T> {

    /** @param notes what was assumed in reading it, to be told */
    record Value<T>(T value, List<String> notes) implements Reading<T> {
        public Value {
            notes = List.copyOf(notes);
        }
    }

    /** The person says that they do not know. */
    record NotKnown<T>() implements Reading<T> {}

    /**
     * @param from where in the text the fault begins, from 0
     * @param to just past its end
     */
    record Fault<T>(int from, int to, String read, String expected, Optional<String> nearest, String remedy)
            implements Reading<T> {

        /** The fault with its place in a file; {@code text} starts in the place's first column. */
        public Problem at(Place start) {
            int last = Math.max(start.column() + 1, start.endColumn());
            Place place = new Place(
                    start.file(),
                    start.line(),
                    Math.min(start.column() + from, last - 1),
                    Math.min(start.column() + Math.max(to, from + 1), last),
                    start.text());
            return new Problem(place, read, expected, nearest, remedy);
        }

        <U> Fault<U> cast() {
            return new Fault<>(from, to, read, expected, nearest, remedy);
        }
    }

    /** The value, if there is one. */
    default Optional<T> found() {
        return this instanceof Value<T> v ? Optional.of(v.value()) : Optional.empty();
    }

    default <U> Reading<U> map(Function<? super T, ? extends U> f) {
        if (this instanceof Value<T> v) {
            return new Value<>(f.apply(v.value()), v.notes());
        }
        return this instanceof Fault<T> fault ? fault.cast() : new NotKnown<>();
    }
}
