package org.strawblue.core.spring.family;

import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/**
 * F = n F₁(s/i): discs stacked, n the same way round (force adds), i such packs against each other (travel adds).
 *
 * <p>With friction F = n F₁/(1 ∓ w_M(n − 1) ∓ w_R), − while pressed, + while released; w_M between discs, w_R at the
 * edges, DIN 2092, from memory.
 *
 * @param parallel n, discs in a pack [1]
 * @param series i, packs [1]
 */
public record DiscStack(DiscSpring disc, int parallel, int series) implements AxialSpring {

    public DiscStack {
        if (parallel < 1 || series < 1) {
            throw new IllegalArgumentException("a stack of " + parallel + " by " + series);
        }
    }

    @Override
    public double force(double deflection) {
        return parallel * disc.force(deflection / series);
    }

    @Override
    public double stress(double deflection) {
        return disc.stress(deflection / series);
    }

    @Override
    public double greatestDeflection() {
        return series * disc.greatestDeflection();
    }

    /** i (h₀ + n t) [m] */
    public double freeLength() {
        return series * (disc.cone() + parallel * disc.thickness());
    }

    /** Released to pressed, at a deflection, with rubbing between discs and at their edges [N]. */
    public Band forceWithFriction(double deflection, double between, double edges) {
        double rub = between * (parallel - 1) + edges;
        double plain = force(deflection);
        return new Band(Dimension.FORCE, plain / (1 + rub), plain / (1 - rub));
    }
}
