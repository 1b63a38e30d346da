package org.strawblue.core.evidence.learn;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.evidence.sample.Distribution;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;

/** What this shop's jobs and logs have taught so far. A value: learning gives a new one. */
public record ShopKnowledge(SortedMap<Subject, Learned> all) {

    public static final ShopKnowledge NOTHING = new ShopKnowledge(new TreeMap<>());

    public ShopKnowledge {
        all = Collections.unmodifiableSortedMap(new TreeMap<>(all));
    }

    public Optional<Learned> of(Subject subject) {
        return Optional.ofNullable(all.get(subject));
    }

    /** Whether an influence belongs to a thing that stays, so that jobs can teach of it. */
    public static boolean learnable(Influence influence) {
        return JobSpread.of(influence).isPresent();
    }

    /** The kind of thing an influence belongs to: "oven", "plate", "crayons". */
    public static Optional<String> thing(Influence influence) {
        return JobSpread.of(influence).map(JobSpread::device);
    }

    /** What an influence that belongs to a thing measures. @throws IllegalArgumentException where it belongs to none */
    public static Dimension dimension(Influence influence) {
        return JobSpread.of(influence)
                .map(JobSpread::dimension)
                .orElseThrow(() -> new IllegalArgumentException(influence + " is of a job, not of a thing"));
    }

    /**
     * The same and what one more job or log told of a thing; a caution comes with it where that does not fit what was told before.
     *
     * @throws IllegalArgumentException where the influence belongs to no thing
     */
    public Answer<ShopKnowledge> with(Subject subject, Told told) {
        dimension(subject.influence());
        Learned before = of(subject).orElse(new Learned(subject, List.of()));
        boolean again = before.told().stream().anyMatch(t -> t.from().equals(told.from()));
        double surprise = again ? 1 : before.surprise(Priors.usual().of(subject.influence()), told);
        SortedMap<Subject, Learned> next = new TreeMap<>(all);
        next.put(subject, before.with(told));
        ShopKnowledge knowledge = new ShopKnowledge(next);
        return surprise < Figures.number("conflict")
                ? Answer.of(knowledge, odd(subject, told, before, surprise))
                : Answer.of(knowledge);
    }

    private static Finding odd(Subject subject, Told told, Learned before, double surprise) {
        String against = before.jobs() == 0 ? "what is usual of its kind" : "the " + before.jobs() + " before it";
        return new Finding.Caution(
                Phrase.of(
                        (told.from() + " does not fit " + against + " for " + subject.device()).replace("{}", "{ }")
                                + " (" + subject.influence().key().replace('-', ' ') + "): one chance in {}.",
                        Quantity.number(Math.round(1 / Math.max(surprise, 1e-6)))),
                Phrase.of("It was counted all the same: what is believed now lies between, and is wider."),
                Phrase.of(
                        "Check its units and what it was measured on; if it is wrong, take it out of the state file."));
    }

    /** The same without what one job or log told: for judging that very one. */
    public ShopKnowledge without(String from) {
        SortedMap<Subject, Learned> rest = new TreeMap<>();
        all.forEach((subject, learned) -> {
            Learned left = learned.without(from);
            if (left.jobs() > 0) {
                rest.put(subject, left);
            }
        });
        return new ShopKnowledge(rest);
    }

    /** What is believed for the next job done with these things. */
    public Priors priors(Priors usual, Collection<String> devices) {
        Map<Influence, Priors.Prior> better = new EnumMap<>(Influence.class);
        all.forEach((subject, learned) -> {
            if (devices.contains(subject.device()) && learned.jobs() > 0) {
                Distribution next = learned.next(usual.of(subject.influence()));
                better.put(subject.influence(), new Priors.Prior(next, basis(learned)));
            }
        });
        return better.isEmpty() ? usual : usual.with(better);
    }

    /** What is believed of one property in the next job, as a number to be told; absent where nothing was learned. */
    public Optional<Estimate> next(Subject subject) {
        Dimension dimension = dimension(subject.influence());
        return of(subject).filter(l -> l.jobs() > 0).map(l -> {
            Distribution d = l.next(Priors.usual().of(subject.influence()));
            return Estimate.of(dimension, d.centre(), d.low(), d.high(), basis(l));
        });
    }

    /** What is usual of an influence in small shops, as a number to be told. */
    public static Estimate usual(Influence influence) {
        Distribution d = Priors.usual().of(influence);
        return Estimate.of(
                dimension(influence),
                d.centre(),
                d.low(),
                d.high(),
                Priors.usual().basis(influence));
    }

    /** What one job or log told, as a number to be told. */
    public static Estimate told(Influence influence, Told told) {
        return Estimate.of(
                dimension(influence),
                told.value(),
                told.low(),
                told.high(),
                new Basis("what " + told.from() + " tells", "shop-knowledge", Standing.FITTED));
    }

    private static Basis basis(Learned learned) {
        Subject subject = learned.subject();
        String jobs = learned.jobs() == 1 ? "1 log" : learned.jobs() + " logs";
        return new Basis(
                subject.influence().key().replace('-', ' ') + " of " + subject.device() + ", from " + jobs,
                "shop-knowledge",
                Standing.FITTED);
    }
}
