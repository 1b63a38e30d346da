package org.strawblue.core.steel;

import java.util.Collection;
import java.util.TreeSet;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/**
 * Hardness by the share of martensite: straight from that of pearlite at none over that of half martensite to that of all.
 *
 * @param full [HRC]
 * @param half [HRC]
 * @param soft hardness of the slack structure [HRC]
 */
record Hardness(Estimate full, Estimate half, double soft) {

    static Answer<Hardness> of(Grade grade, Estimate full) {
        double carbon = Austenite.percent(Austenite.carbon(grade).value());
        double base = Figures.HARDENING.si("pearlite-base", Dimension.HARDNESS);
        double soft = base + Figures.number("pearlite-per-carbon") * carbon;
        return A255Hardness.half().held(carbon).map(half -> new Hardness(full, half, soft));
    }

    /** [HRC] where half temperature is reached in {@code ratio} of the critical time, its logarithm uncertain by {@code sd}. */
    Estimate at(double ratio, double sd, Collection<Basis> bases) {
        double spread = Math.exp(Normal.HALF_OF_80 * sd);
        double value = of(Hardenability.share(ratio));
        double down = value - of(Hardenability.share(ratio * spread));
        double up = of(Hardenability.share(ratio / spread)) - value;
        TreeSet<Basis> all = new TreeSet<>(bases);
        all.addAll(full.bases());
        all.addAll(half.bases());
        return Estimate.of(
                Dimension.HARDNESS,
                value,
                value - Math.hypot(down, full.value() - full.low()),
                value + Math.hypot(up, full.high() - full.value()),
                all);
    }

    private double of(double martensite) {
        double least = Math.min(soft, half.value());
        double rest = 2 * martensite - 1;
        return rest >= 0
                ? half.value() + rest * (full.value() - half.value())
                : half.value() + rest * (half.value() - least);
    }
}
