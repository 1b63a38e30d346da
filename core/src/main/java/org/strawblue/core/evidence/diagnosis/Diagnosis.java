package org.strawblue.core.evidence.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;

/**
 * Why a part came out as it did.
 *
 * <p>Causes start from how often each is met, are weighed by what was seen ({@code chances.csv}: direction common practice, figures
 * assumed) and by what the laws of steel and heat make of this job ({@link Checks}).
 *
 * @param causes likeliest first
 * @param tests what tells them apart, best for its effort first
 */
public record Diagnosis(Topic topic, List<Ranked> causes, List<NextTest> tests, List<Finding> findings) {

    public Diagnosis {
        causes = List.copyOf(causes);
        tests = List.copyOf(tests);
        findings = List.copyOf(findings);
    }

    /** @param seen answers by clue, in the keys of {@link Clue} */
    public static Diagnosis of(Topic symptom, Known known, Map<String, String> seen) {
        Inquiry inquiry = new Inquiry(symptom, known, seen);
        List<Ranked> ranked = inquiry.ranked();
        List<Finding> findings = new ArrayList<>(inquiry.conflicts());
        Ranked first = ranked.get(0);
        if (first.chance().value() < Figures.number("likely")) {
            findings.add(new Finding.Note(
                    Phrase.of("No cause stands out yet."),
                    Phrase.of("What is known fits several of them about as well."),
                    Phrase.of("Try what is named next, and ask again with its answer.")));
        }
        return new Diagnosis(symptom, ranked, inquiry.tests(), findings);
    }

    /** Whether the first cause is sure enough to put right at once. */
    public boolean sure() {
        return causes.get(0).chance().value() >= Figures.number("sure");
    }
}
