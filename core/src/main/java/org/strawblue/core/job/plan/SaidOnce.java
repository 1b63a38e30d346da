package org.strawblue.core.job.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.Step;

/** A card that repeats itself is not read: what an earlier step has said in the same words is not said again. */
final class SaidOnce {

    private final Set<Object> said = new HashSet<>();

    private SaidOnce() {}

    /** Cautions for safety stay at every step where the hazard is, in full the first time and in short after that. */
    static List<Step> of(List<Step> steps) {
        SaidOnce card = new SaidOnce();
        return steps.stream().map(card::trimmed).toList();
    }

    private Step trimmed(Step step) {
        return step.with(
                step.reasons().stream().filter(said::add).toList(),
                step.hazards().stream()
                        .map(h -> said.add(h.key()) ? h : h.reminder())
                        .toList(),
                step.findings().stream()
                        .filter(f -> f instanceof Finding.Stop || said.add(f))
                        .toList());
    }
}
