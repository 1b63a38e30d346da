package org.strawblue.core.evidence.learn;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.evidence.sample.Distribution;

/** What jobs and logs have told of one property of one thing, in the order they came, each once. */
public record Learned(Subject subject, List<Told> told) {

    public Learned {
        told = List.copyOf(told);
    }

    /** How many jobs and logs it rests on. */
    public int jobs() {
        return told.size();
    }

    /** One more; what the same job or log told earlier is replaced. */
    public Learned with(Told more) {
        List<Told> all = new ArrayList<>(told);
        all.removeIf(t -> t.from().equals(more.from()));
        all.add(more);
        return new Learned(subject, all);
    }

    Learned without(String from) {
        return new Learned(
                subject, told.stream().filter(t -> !t.from().equals(from)).toList());
    }

    /** What is believed of its value in the next job, from what is usual and what was told. */
    public Distribution next(Distribution usual) {
        return told.isEmpty() ? usual : distribution(usual, hierarchy(usual).next(bells(usual.kind())));
    }

    /** What is believed of the thing's own value, that about which its jobs lie. */
    public Distribution own(Distribution usual) {
        return distribution(usual, hierarchy(usual).own(bells(usual.kind())));
    }

    /** Chance [1] of something as odd as this, going by what is usual and what was told before. */
    public double surprise(Distribution usual, Told more) {
        Hierarchy.Bell bell = bell(usual.kind(), more);
        Mixture next = hierarchy(usual).next(bells(usual.kind()));
        double sd = Math.hypot(Math.hypot(next.spread(), bell.sd()), common(usual.kind(), more));
        return 2 * Normal.below(-Math.abs(bell.at() - next.middle()) / sd);
    }

    private static Distribution distribution(Distribution usual, Mixture mixture) {
        return new Distribution(
                usual.kind(),
                usual.kind().unscaled(mixture.quantile(0.5)),
                usual.kind().unscaled(mixture.quantile(0.1)),
                usual.kind().unscaled(mixture.quantile(0.9)));
    }

    /** What is usual is of any thing in any job: the spread between jobs is part of it. */
    private Hierarchy hierarchy(Distribution usual) {
        double between = JobSpread.of(subject.influence()).orElseThrow().spread();
        Distribution.Kind kind = usual.kind();
        double middle = kind.scaled(usual.centre());
        double below = (middle - kind.scaled(usual.low())) / Normal.HALF_OF_80;
        double above = (kind.scaled(usual.high()) - middle) / Normal.HALF_OF_80;
        // two halves of bells that meet at the centre, half of the chance in each: E|z| = √(2/π)
        double mean = middle + (above - below) / Math.sqrt(2 * Math.PI);
        double variance = (above * above + below * below) / 2 - (mean - middle) * (mean - middle);
        double own = Math.max(variance - between * between, variance / 4);
        return new Hierarchy(mean, Math.sqrt(own), between, common(kind));
    }

    /** The largest error in common: instruments are not told apart. */
    private double common(Distribution.Kind kind) {
        return told.stream().mapToDouble(t -> common(kind, t)).max().orElse(0);
    }

    private static double common(Distribution.Kind kind, Told t) {
        return (kind.scaled(t.value() + t.common()) - kind.scaled(t.value())) / Normal.HALF_OF_80;
    }

    private List<Hierarchy.Bell> bells(Distribution.Kind kind) {
        return told.stream().map(t -> bell(kind, t)).toList();
    }

    private static Hierarchy.Bell bell(Distribution.Kind kind, Told t) {
        double sd = (kind.scaled(t.high()) - kind.scaled(t.low())) / (2 * Normal.HALF_OF_80);
        return new Hierarchy.Bell(kind.scaled(t.value()), sd);
    }
}
