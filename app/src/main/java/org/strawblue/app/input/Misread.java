package org.strawblue.app.input;

import java.io.Serial;
import java.util.Optional;

/** Carries a fault out of the depths of a scan to the reader that started it; never leaves this package. */
final class Misread extends Exception {

    @Serial
    private static final long serialVersionUID = 1L;

    private final int from;
    private final int to;
    private final String expected;
    private final String nearest;
    private final String remedy;

    Misread(int from, int to, String expected, String nearest, String remedy) {
        super(expected, null, false, false); // no stack: a fault of the input is no accident
        this.from = from;
        this.to = to;
        this.expected = expected;
        this.nearest = nearest;
        this.remedy = remedy;
    }

    Misread(int from, int to, String expected, String remedy) {
        this(from, to, expected, "", remedy);
    }

    <T> Reading.Fault<T> fault(String text) {
        boolean atEnd = from >= text.stripTrailing().length(); // something is missing: the whole is shown
        int start = atEnd ? 0 : from;
        int end = atEnd ? text.length() : Math.min(Math.max(to, from), text.length());
        String read = text.substring(start, end).strip();
        return new Reading.Fault<>(
                start, end, read, expected, Optional.of(nearest).filter(n -> !n.isEmpty()), remedy);
    }
}
