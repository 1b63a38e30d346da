package org.strawblue.core.spring.family;

import java.util.Comparator;
import java.util.List;

/**
 * 1/k = Σ 1/kᵢ until the first goes solid; from then on that one gives no more and the rest is stiffer: compression
 * springs end to end, a washer between each two.
 *
 * <p>Source: statics.
 */
public record SeriesStack(List<HelicalSpring> springs) implements AxialSpring {

    public SeriesStack {
        if (springs.isEmpty()) {
            throw new IllegalArgumentException("a stack of no springs");
        }
        springs = springs.stream()
                .sorted(Comparator.comparingDouble(s -> s.rate() * s.greatestDeflection()))
                .toList();
    }

    @Override
    public double force(double deflection) {
        double left = deflection;
        for (int i = 0; i < springs.size(); i++) {
            double give = giveFrom(i);
            double atSolid = springs.get(i).force(springs.get(i).greatestDeflection());
            if (left <= give * atSolid || i == springs.size() - 1) {
                return left / give;
            }
            left -= springs.get(i).greatestDeflection();
        }
        throw new IllegalStateException("no last spring");
    }

    /** In the most strained of them. */
    @Override
    public double stress(double deflection) {
        double force = force(deflection);
        return springs.stream()
                .mapToDouble(s -> s.stress(Math.min(force / s.rate(), s.greatestDeflection())))
                .max()
                .orElse(0);
    }

    @Override
    public double greatestDeflection() {
        return springs.stream().mapToDouble(HelicalSpring::greatestDeflection).sum();
    }

    /** Rate while none is solid [N/m]. */
    public double rate() {
        return 1 / giveFrom(0);
    }

    /** Deflection for each newton of the springs that are not solid yet [m/N]. */
    private double giveFrom(int first) {
        double give = 0;
        for (HelicalSpring spring : springs.subList(first, springs.size())) {
            give += 1 / spring.rate();
        }
        return give;
    }
}
