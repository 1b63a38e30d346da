package org.strawblue.core.fit;

import java.util.Collection;
import java.util.List;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/**
 * g = Σ aᵢ xᵢ: a gap as the sum of independent sizes.
 *
 * <p>xᵢ sizes [m], aᵢ weights [1]. Worst case Σ min/max aᵢxᵢ; root sum square √Σ(aᵢTᵢ)² with Tᵢ half the width of the
 * limits; the law of g by convolution of the laws of aᵢxᵢ, exact but for the fineness of its {@link Grid}. The root sum
 * square supposes many parts from a steady process: for one part the law of g says more, and the worst case most.
 */
public record Chain(String name, List<Link> links) {

    private static final double TENTH = 0.1;

    public Chain {
        links = List.copyOf(links);
        if (links.isEmpty()) {
            throw new IllegalArgumentException("a chain needs a link");
        }
    }

    /** The same chain by another name. */
    public Chain named(String other) {
        return new Chain(other, links);
    }

    /** Every link at its worst limit [m]. */
    public Band worstCase() {
        double low = 0;
        double high = 0;
        for (Link link : links) {
            Band limits = link.spread().limits();
            double a = link.weight() * limits.low();
            double b = link.weight() * limits.high();
            low += Math.min(a, b);
            high += Math.max(a, b);
        }
        return new Band(Dimension.LENGTH, low, high);
    }

    /** Half the width by root sum square [m]. */
    public double rootSumSquare() {
        double sum = 0;
        for (Link link : links) {
            double half = link.weight() * link.spread().limits().width() / 2;
            sum += half * half;
        }
        return Math.sqrt(sum);
    }

    /** Mean of the gap [m]: Σ aᵢ mᵢ. */
    public double mean() {
        return links.stream().mapToDouble(l -> l.weight() * l.spread().mean()).sum();
    }

    /** Standard deviation of the gap [m]: √Σ aᵢ² vᵢ. */
    public double deviation() {
        return Math.sqrt(links.stream()
                .mapToDouble(l -> l.weight() * l.weight() * l.spread().variance())
                .sum());
    }

    /** Chance [1] that the gap is greater than {@code x} [m]. */
    public double chanceAbove(double x) {
        return 1 - Grid.of(this).below(x);
    }

    /** Chance [1] that the gap lies within limits [m]. */
    public double chanceWithin(Band limits) {
        Grid grid = Grid.of(this);
        return Math.max(0, grid.below(limits.high()) - grid.below(limits.low()));
    }

    /** The gap to expect [m]: median and the values with a tenth beyond on either side. */
    public Estimate estimate(Collection<Basis> bases) {
        Grid grid = Grid.of(this);
        return Estimate.of(Dimension.LENGTH, grid.at(0.5), grid.at(TENTH), grid.at(1 - TENTH), bases);
    }
}
