package org.strawblue.core.steel;

import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/** What is in solution at the hardening temperature. */
final class Austenite {

    private static final Unit PERCENT = Units.of(Dimension.FRACTION, "%");

    private Austenite() {}

    /** The grade's nominal composition with its dissolved carbon. Alloy bound in carbides is not taken off. */
    static Composition of(Grade grade) {
        return grade.composition().with(Element.C, percent(carbon(grade).value()));
    }

    /** Carbon in solution after a usual soak [1]: found, or all of it up to a cap. */
    static Estimate carbon(Grade grade) {
        return grade.found(Property.DISSOLVED_CARBON).orElseGet(() -> capped(grade));
    }

    static double percent(double fraction) {
        return PERCENT.fromSi(fraction);
    }

    private static Estimate capped(Grade grade) {
        double total = grade.composition().c();
        double dissolved = Math.min(total, Figures.number("dissolved-cap"));
        double half = dissolved < total ? Figures.number("dissolved-spread") : 0;
        return Estimate.of(
                Dimension.FRACTION,
                PERCENT.toSi(dissolved),
                PERCENT.toSi(dissolved - half),
                PERCENT.toSi(Math.min(total, dissolved + half)),
                Figures.HARDENING.basis("carbon in solution", "dissolved-cap"));
    }
}
