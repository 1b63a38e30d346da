package org.strawblue.app.service;

import java.util.List;
import java.util.stream.Collectors;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Phrase;

/** Puts phrases together. */
final class Phrases {

    private Phrases() {}

    static Phrase joined(String between, Phrase... parts) {
        return joined(between, List.of(parts));
    }

    static Phrase joined(String between, List<Phrase> parts) {
        String template = parts.stream().map(Phrase::template).collect(Collectors.joining(between));
        List<Amount> amounts = parts.stream().flatMap(p -> p.amounts().stream()).toList();
        return new Phrase(template, amounts);
    }
}
