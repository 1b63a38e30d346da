package org.strawblue.core.spring.find;

import java.util.Map;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.Duty;
import org.strawblue.core.spring.Limit;

/** One spring behind another with a washer between: the same force in both, deflections add. */
record StackedPair(Member first, Member second) implements Pair {

    static final double WASHER = Practice.OF.si("washer", Dimension.LENGTH);

    @Override
    public Map<Limit, Double> margins(Coil a, Coil b) {
        Duty duty = first.duty();
        double free = a.free() + b.free() + WASHER;
        double rate = 1 / (1 / first.rate(a) + 1 / second.rate(b));
        double rest = rate * Math.max(0, free - duty.atRest());
        double full = rate * Math.max(0, free - duty.atFull());
        double longA = a.free() - full / first.rate(a);
        double longB = b.free() - full / second.rate(b);
        Map<Limit, Double> margins = Pair.forces(duty, rest, full);
        margins.put(Limit.REACHES, free / duty.atRest() - 1);
        margins.put(Limit.CLEAR_OF_SOLID, Math.min(first.clear(a, longA), second.clear(b, longB)));
        margins.put(Limit.CLEARS_BORE, 1 - Math.max(first.widest(a, longA), second.widest(b, longB)) / duty.bore());
        margins.put(Limit.GOES_OVER_ROD, Math.min(a.inside(), b.inside()) / Math.max(duty.rod(), 1e-9) - 1);
        margins.put(Limit.TAKES_NO_SET, Math.min(first.set(a, full), second.set(b, full)));
        margins.put(Limit.LASTS, Math.min(first.lasts(a, rest, full), second.lasts(b, rest, full)));
        margins.put(Limit.STAYS_STRAIGHT, straight(a, b, free));
        return margins;
    }

    /** As one spring of both lengths and the narrower coil. */
    private double straight(Coil a, Coil b, double free) {
        if (first.duty().guided(a) && second.duty().guided(b)) {
            return Double.POSITIVE_INFINITY;
        }
        Coil narrow = a.mean() < b.mean() ? a : b;
        Coil whole = Coil.of(narrow.wire(), narrow.outside(), free, a.total() + b.total(), narrow.ends());
        return first.straight(whole, first.duty().atFull());
    }
}
