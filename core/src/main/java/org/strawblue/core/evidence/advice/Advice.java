package org.strawblue.core.evidence.advice;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.evidence.judge.NextLook;
import org.strawblue.core.steel.Temper;

/**
 * What to do next.
 *
 * @param soft chance that the part is softer than wanted [1]
 * @param within chance that it is as wanted [1]
 * @param hard chance that it is harder than wanted [1]
 * @param options all that was weighed, the cheapest first
 * @param look the look to take first, where one is worth its cost or no verdict can be given without it
 */
public record Advice(
        Deed deed,
        double soft,
        double within,
        double hard,
        List<Option> options,
        Optional<NextLook> look,
        List<Finding> findings) {

    /** What can be done. */
    public enum Deed {
        ACCEPT,
        TEMPER_AGAIN,
        HARDEN_AGAIN,
        LOOK_FIRST
    }

    /**
     * One thing to do and what it is expected to cost.
     *
     * @param within chance that the part then is as wanted [1]
     * @param temper the second temper, where that is what is to be done
     */
    public record Option(Deed deed, double loss, double within, Optional<Temper> temper) {}

    public Advice {
        options = List.copyOf(options);
        findings = List.copyOf(findings);
    }
}
