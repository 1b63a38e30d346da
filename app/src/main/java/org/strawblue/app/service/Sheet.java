package org.strawblue.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.source.Basis;

/**
 * The answer to one question, ready to be printed in any form.
 *
 * @param title the question in a few words
 */
public record Sheet(String title, List<Entry> entries, List<Finding> findings) {

    public Sheet {
        entries = List.copyOf(entries);
        findings = List.copyOf(findings);
    }

    /** Whether the question was understood, but cannot or must not be answered as asked. */
    public boolean refused() {
        return findings.stream().anyMatch(Finding.Stop.class::isInstance);
    }

    /** Everything its numbers rest on. */
    public SortedSet<Basis> bases() {
        SortedSet<Basis> all = new TreeSet<>();
        entries.forEach(e -> {
            if (e instanceof Entry.Number number) {
                all.addAll(number.estimate().bases());
            }
        });
        return all;
    }

    public static Builder titled(String title) {
        return new Builder(title);
    }

    /** Collects entries and findings in the order in which they are to be read. */
    public static final class Builder {

        private final String title;
        private final List<Entry> entries = new ArrayList<>();
        private final List<Finding> findings = new ArrayList<>();

        private Builder(String title) {
            this.title = title;
        }

        public Builder add(String key, String label, Estimate estimate) {
            return add(new Entry.Number(key, label, estimate));
        }

        public Builder add(Entry entry) {
            entries.add(entry);
            return this;
        }

        /** Each once, however many answers carried it. */
        public Builder findings(List<Finding> more) {
            more.stream().filter(f -> !findings.contains(f)).forEach(findings::add);
            return this;
        }

        public Sheet build() {
            return new Sheet(title, entries, findings);
        }
    }
}
