package org.strawblue.core.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A result with its findings, or findings alone where no result may be given. */
public record Answer<T>(Optional<T> value, List<Finding> findings) {

    public Answer {
        findings = List.copyOf(findings);
    }

    public static <T> Answer<T> of(T value, List<Finding> findings) {
        return new Answer<>(Optional.of(value), findings);
    }

    public static <T> Answer<T> of(T value, Finding... findings) {
        return of(value, List.of(findings));
    }

    /** No result, for these reasons. */
    public static <T> Answer<T> refused(List<Finding> findings) {
        return new Answer<>(Optional.empty(), findings);
    }

    public static <T> Answer<T> refused(Finding... findings) {
        return refused(List.of(findings));
    }

    public <U> Answer<U> map(Function<? super T, ? extends U> f) {
        return new Answer<>(value.map(f), findings);
    }

    /** Goes on with a further question; the findings of both are kept. */
    public <U> Answer<U> then(Function<? super T, Answer<U>> f) {
        if (value.isEmpty()) {
            return refused(findings);
        }
        Answer<U> next = f.apply(value.get());
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(next.findings());
        return new Answer<>(next.value(), all);
    }

    public boolean stopped() {
        return findings.stream().anyMatch(Finding.Stop.class::isInstance);
    }
}
