package org.strawblue.core.evidence.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/**
 * What family a steel of no name belongs to, by its look, a magnet, a file, its sparks, and coupons quenched in oil, then in water,
 * filed and snapped. How to treat it is told only where one family stands clear of the rest.
 *
 * @param families likeliest first
 * @param tests what to try next, best for its effort first
 * @param advice how to treat it; absent where that would be a guess, and then the findings say so
 */
public record UnknownSteel(
        List<Ranked> families, List<NextTest> tests, Optional<Family> advice, List<Finding> findings) {

    public UnknownSteel {
        families = List.copyOf(families);
        tests = List.copyOf(tests);
        findings = List.copyOf(findings);
    }

    public static Topic topic() {
        return Topic.of(Topic.STEEL);
    }

    /** @param seen answers by clue, in the keys of {@link Clue} */
    public static UnknownSteel of(Map<String, String> seen) {
        Inquiry inquiry = new Inquiry(topic(), Known.NOTHING, seen);
        List<Ranked> ranked = inquiry.ranked();
        List<Finding> findings = new ArrayList<>(inquiry.conflicts());
        Ranked first = ranked.get(0);
        boolean clear = findings.isEmpty()
                && inquiry.clues() >= Figures.number("family-clues")
                && first.chance().value() >= Figures.number("family-sure")
                && first.chance().low() >= Figures.number("family-least");
        if (!clear) {
            findings.add(guess(first));
        }
        Optional<Family> advice = clear ? Optional.of(Family.of(first.cause().key())) : Optional.empty();
        return new UnknownSteel(ranked, inquiry.tests(), advice, findings);
    }

    private static Finding guess(Ranked first) {
        return new Finding.Caution(
                Phrase.of(
                        "No treatment is advised: " + first.cause().title() + " has a chance of {} only.",
                        Quantity.fraction(first.chance().value())),
                Phrase.of(
                        "Hardening heats lie hundreds of degrees apart, and one family's quench cracks another: it would be a"
                                + " guess."),
                Phrase.of("Try what is named next, or make the part of a bar that is marked."));
    }
}
