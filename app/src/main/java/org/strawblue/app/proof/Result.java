package org.strawblue.app.proof;

import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Quantity;

/** What an operation gives back: a quantity or a word. */
public sealed interface Result {

    /** The word given where the program refuses to answer. */
    String REFUSED = "refused";

    record Number(Quantity quantity) implements Result {}

    record Word(String text) implements Result {}

    static Result of(Quantity quantity) {
        return new Number(quantity);
    }

    static Result of(Estimate estimate) {
        return new Number(estimate.quantity());
    }

    /** The answer's value, or the word "refused". */
    static Result of(Answer<Estimate> answer) {
        return answer.value().map(Result::of).orElse(new Word(REFUSED));
    }

    static Result word(String text) {
        return new Word(text);
    }

    /** A pure number; the case's unit is 1. */
    static Result number(double value) {
        return new Number(Quantity.number(value));
    }
}
