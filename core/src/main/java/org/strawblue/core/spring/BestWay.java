package org.strawblue.core.spring;

import java.util.Optional;

/**
 * How a spring that may work is best used: as it is, or cut to the end that is squarest among those that are nearly as
 * likely to work as the likeliest.
 *
 * @param cut absent for as it is
 * @param probability by few points; only good for comparing [1]
 */
record BestWay(Optional<Cut> cut, double probability) {

    private static final double NEARLY = Figures.PRACTICE.number("nearly_as_good");

    /** Absent where no way keeps every limit, each measurement taken as exact. */
    static Optional<BestWay> of(MeasuredInputs inputs, Duty duty, boolean worksAsItIs) {
        BestWay best = worksAsItIs ? way(inputs, duty, Optional.empty()) : null;
        if (best != null && best.sure()) {
            return Optional.of(best);
        }
        CutScan scan = new CutScan(inputs, duty);
        double likeliest = best == null ? 0 : best.probability;
        for (EndType end : CutScan.newEnds(inputs.middle()[MeasuredInputs.WIRE])) {
            BestWay next = likelier(cut(inputs, duty, scan, end, false), cut(inputs, duty, scan, end, true));
            if (next != null && (best == null || next.probability > Math.max(likeliest, best.probability + NEARLY))) {
                best = next;
            }
            likeliest = Math.max(likeliest, next == null ? 0 : next.probability);
            if (best != null && best.sure()) {
                break;
            }
        }
        return Optional.ofNullable(best);
    }

    /** So likely that no other can beat it by more than what squareness is worth. */
    private boolean sure() {
        return probability >= 1 - NEARLY;
    }

    private static @org.jspecify.annotations.Nullable BestWay cut(
            MeasuredInputs inputs, Duty duty, CutScan scan, EndType end, boolean atFirst) {
        if (atFirst && inputs.ends().first() == inputs.ends().second()) {
            return null;
        }
        Optional<Cut> cut = scan.best(atFirst, end);
        return cut.isPresent() ? way(inputs, duty, cut) : null;
    }

    private static @org.jspecify.annotations.Nullable BestWay likelier(
            @org.jspecify.annotations.Nullable BestWay a, @org.jspecify.annotations.Nullable BestWay b) {
        return a == null || b != null && b.probability > a.probability ? b : a;
    }

    private static BestWay way(MeasuredInputs inputs, Duty duty, Optional<Cut> cut) {
        return new BestWay(cut, WorkingProbability.coarse().of(inputs, cut, duty));
    }
}
