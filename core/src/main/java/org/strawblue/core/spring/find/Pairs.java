package org.strawblue.core.spring.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.Hand;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;

/** Two springs of the drawer together: one inside the other, or end to end. */
final class Pairs {

    private static final int PARTNERS = (int) Practice.OF.number("partners");

    private Pairs() {}

    /** Those that keep every limit, and nests that only their hand forbids; the likeliest first, none twice. */
    static List<Candidate> of(Pocket pocket, List<MeasuredSpring> drawer) {
        List<Member> members = Member.of(drawer, pocket).stream()
                .filter(m -> m.coil().outside() <= m.duty().bore()
                        && m.coil().inside() >= m.duty().rod())
                .limit(PARTNERS)
                .toList();
        List<Candidate> all = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            for (int j = 0; j < members.size(); j++) {
                if (i != j) {
                    nested(members.get(i), members.get(j)).ifPresent(all::add);
                }
                boolean two = members.get(i).spring().spring().quantity() > 1;
                if (i < j || i == j && two) {
                    stacked(members.get(i), members.get(j)).ifPresent(all::add);
                }
            }
        }
        all.sort(Comparator.comparingDouble(Candidate::probability).reversed());
        return all;
    }

    private static Optional<Candidate> nested(Member outer, Member inner) {
        NestedPair pair = new NestedPair(outer, inner);
        if (!pair.fits() || pair.worst(outer.coil(), inner.coil()) < 0) {
            return Optional.empty();
        }
        Optional<Boolean> same = pair.sameHand();
        List<Phrase> failures = same.orElse(false)
                ? List.of(Phrase.of("wrong hand: both are wound to the " + hand(outer)
                        + ", so that the coils of one fall between those of the other"))
                : List.of();
        List<Finding> cautions = same.isPresent() ? List.of() : List.of(handUnknown());
        Phrase how = Phrase.of("“" + name(inner) + "” inside “" + name(outer) + "”");
        return Optional.of(candidate(Candidate.Kind.NESTED, pair, how, failures, cautions));
    }

    private static Optional<Candidate> stacked(Member first, Member second) {
        StackedPair pair = new StackedPair(first, second);
        if (pair.worst(first.coil(), second.coil()) < 0) {
            return Optional.empty();
        }
        Phrase how = Phrase.of(
                "“" + name(first) + "” and “" + name(second) + "” end to end, a washer of {} between them",
                Quantity.length(StackedPair.WASHER));
        return Optional.of(candidate(Candidate.Kind.STACKED, pair, how, List.of(), List.of()));
    }

    private static Candidate candidate(
            Candidate.Kind kind, Pair pair, Phrase how, List<Phrase> failures, List<Finding> cautions) {
        double chance = failures.isEmpty() ? PairChance.of(pair) : 0;
        List<MeasuredSpring> springs =
                List.of(pair.first().spring().spring(), pair.second().spring().spring());
        return new Candidate(kind, springs, Optional.empty(), how, chance, failures, cautions);
    }

    private static Finding handUnknown() {
        return new Finding.Caution(
                Phrase.of("Nest only springs of opposite hand."),
                Phrase.of("Wound the same way, the coils of one fall between those of the other and jam."),
                Phrase.of("Hold both upright: the coils must rise to opposite sides."));
    }

    private static String hand(Member member) {
        return member.spring()
                .spring()
                .seen()
                .hand()
                .map(h -> h == Hand.LEFT ? "left" : "right")
                .orElse("same side");
    }

    private static String name(Member member) {
        return member.spring().spring().name().replace("{}", "{ }");
    }
}
