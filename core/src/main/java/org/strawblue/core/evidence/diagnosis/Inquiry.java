package org.strawblue.core.evidence.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;

/** Weighs the causes of one topic by what is known and seen, and ranks what could be tried next. */
final class Inquiry {

    private final Topic topic;
    private final Map<String, String> seen;
    private final Map<String, Phrase> because = new LinkedHashMap<>();
    private final List<Basis> bases = new ArrayList<>();
    private final List<Clue> weighed = new ArrayList<>();
    private final Belief belief;

    /** @param seen answers by clue, in our own keys; what does not belong to the topic is passed over */
    Inquiry(Topic topic, Known known, Map<String, String> seen) {
        this.topic = topic;
        this.seen = seen;
        this.belief =
                new Belief(topic.causes().stream().mapToDouble(Cause::weight).toArray());
        bases.add(Figures.spread());
        topic.causes().stream().limit(1).forEach(c -> bases.add(c.basis()));
        topic.clues().forEach(this::weigh);
        topic.causes().forEach(c -> check(c, known));
    }

    private void weigh(Clue clue) {
        String answer = seen.get(clue.key());
        double[][] table = topic.table(clue);
        for (int a = 0; a < table.length; a++) {
            if (clue.answers().get(a).key().equals(answer)) {
                belief.add(table[a], Figures.number("chance-spread"));
                weighed.add(clue);
            }
        }
    }

    private void check(Cause cause, Known known) {
        Checks.of(cause.check(), known).ifPresent(check -> {
            double[] factors = topic.causes().stream()
                    .mapToDouble(c -> c == cause ? Checks.factor(cause.check(), check) : 1)
                    .toArray();
            belief.add(factors, Figures.number("check-spread"));
            because.put(cause.key(), check.because());
            bases.add(check.basis());
        });
    }

    /** The causes, likeliest first. */
    List<Ranked> ranked() {
        List<Estimate> chances = belief.estimates(Figures.number("weight-spread"), bases);
        List<Ranked> ranked = new ArrayList<>();
        for (int c = 0; c < chances.size(); c++) {
            Cause cause = topic.causes().get(c);
            ranked.add(new Ranked(cause, chances.get(c), Optional.ofNullable(because.get(cause.key()))));
        }
        ranked.sort(Comparator.comparingDouble((Ranked r) -> r.chance().value()).reversed());
        return ranked;
    }

    /** What could still be tried, best first by information for its effort. */
    List<NextTest> tests() {
        return topic.clues().stream()
                .filter(c -> !seen.containsKey(c.key()) && allowed(c))
                .map(c -> new NextTest(c, belief.gain(topic.table(c))))
                .filter(t -> t.bits() >= Figures.number("least-bits"))
                .sorted(Comparator.comparingDouble(NextTest::worth).reversed())
                .toList();
    }

    private boolean allowed(Clue clue) {
        if (clue.needs().isBlank()) {
            return true;
        }
        String[] needs = clue.needs().split("=", 2);
        String answer = seen.get(needs[0]);
        return answer != null && (needs.length == 1 || needs[1].equals(answer));
    }

    /** What was seen that hardly goes with the rest. */
    List<Finding> conflicts() {
        List<Finding> findings = new ArrayList<>();
        for (int w = 0; w < weighed.size() && weighed.size() > 1; w++) {
            double expected = belief.expected(w);
            if (expected < Figures.number("conflict")) {
                findings.add(new Finding.Caution(
                        Phrase.of(
                                "“" + seen.get(weighed.get(w).key()) + "” to “"
                                        + weighed.get(w).question() + "” does not fit the rest: one chance in {}.",
                                Quantity.number(Math.round(1 / expected))),
                        Phrase.of("The order of causes leans on which of them is right."),
                        Phrase.of("Look at it again before you act on either.")));
            }
        }
        return findings;
    }

    int clues() {
        return weighed.size();
    }
}
