package org.strawblue.core.job;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.source.Basis;

/**
 * The worked-out job.
 *
 * @param title the job's name
 * @param summary the whole in a line or two for each part: steel, hardness, temperature, colour
 * @param steps in the order of work
 * @param findings what concerns the job as a whole; each step has its own besides
 * @param unknowns what the job file left open, and what that costs in certainty
 * @param haveReady things to lay out or buy
 */
public record JobCard(
        String title,
        List<Phrase> summary,
        List<Step> steps,
        List<Finding> findings,
        List<Phrase> unknowns,
        List<Item> haveReady) {

    public JobCard {
        summary = List.copyOf(summary);
        steps = List.copyOf(steps);
        findings = List.copyOf(findings);
        unknowns = List.copyOf(unknowns);
        haveReady = List.copyOf(haveReady);
    }

    /** Whether the job must not be done as asked. */
    public boolean refused() {
        return allFindings().anyMatch(Finding.Stop.class::isInstance);
    }

    public Stream<Finding> allFindings() {
        return Stream.concat(findings.stream(), steps.stream().flatMap(s -> s.findings().stream()));
    }

    /** Everything the card's numbers rest on. */
    public SortedSet<Basis> bases() {
        SortedSet<Basis> all = new TreeSet<>();
        steps.forEach(s -> s.figures().forEach(f -> all.addAll(f.estimate().bases())));
        return all;
    }
}
