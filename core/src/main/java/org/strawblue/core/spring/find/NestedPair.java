package org.strawblue.core.spring.find;

import java.util.Map;
import java.util.Optional;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.Duty;
import org.strawblue.core.spring.Hand;
import org.strawblue.core.spring.Limit;

/** One spring inside another: forces add, each is strained by its own deflection. */
record NestedPair(Member first, Member second) implements Pair {

    /** {@code first} is the outer one. */
    boolean fits() {
        return first.coil().inside() > second.coil().outside();
    }

    /** Both wound the same way; absent where the hand of one is not noted. */
    Optional<Boolean> sameHand() {
        Optional<Hand> outer = first.spring().spring().seen().hand();
        Optional<Hand> inner = second.spring().spring().seen().hand();
        return outer.isPresent() && inner.isPresent() ? Optional.of(outer.equals(inner)) : Optional.empty();
    }

    @Override
    public Map<Limit, Double> margins(Coil outer, Coil inner) {
        Duty duty = first.duty();
        double restOuter = first.rate(outer) * Math.max(0, outer.free() - duty.atRest());
        double restInner = second.rate(inner) * Math.max(0, inner.free() - duty.atRest());
        double fullOuter = first.rate(outer) * Math.max(0, outer.free() - duty.atFull());
        double fullInner = second.rate(inner) * Math.max(0, inner.free() - duty.atFull());
        Map<Limit, Double> margins = Pair.forces(duty, restOuter + restInner, fullOuter + fullInner);
        margins.put(Limit.REACHES, Math.max(outer.free(), inner.free()) / duty.atRest() - 1);
        margins.put(
                Limit.CLEAR_OF_SOLID, Math.min(first.clear(outer, duty.atFull()), second.clear(inner, duty.atFull())));
        margins.put(Limit.CLEARS_BORE, bore(outer, inner));
        margins.put(Limit.GOES_OVER_ROD, (inner.inside() - duty.rod()) / inner.inside());
        margins.put(Limit.TAKES_NO_SET, Math.min(first.set(outer, fullOuter), second.set(inner, fullInner)));
        margins.put(
                Limit.LASTS,
                Math.min(first.lasts(outer, restOuter, fullOuter), second.lasts(inner, restInner, fullInner)));
        boolean guided = first.duty().guided(outer) || second.duty().guided(inner);
        margins.put(Limit.STAYS_STRAIGHT, guided ? Double.POSITIVE_INFINITY : first.straight(outer, duty.atFull()));
        return margins;
    }

    /** The outer in the bore, the inner in the outer with half the difference of their wires to spare. */
    private double bore(Coil outer, Coil inner) {
        double at = first.duty().atFull();
        double between =
                (outer.inside() - second.widest(inner, at)) / 2 - Math.max(0, (outer.wire() - inner.wire()) / 2);
        double inBore = 1 - first.widest(outer, at) / first.duty().bore();
        return Math.min(inBore, between / inner.outside());
    }
}
