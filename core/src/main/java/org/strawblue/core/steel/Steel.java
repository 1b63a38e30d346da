package org.strawblue.core.steel;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of the steel in hand when its tempering is asked for. Any of it may be missing; the more there is, the
 * narrower the answer.
 *
 * @param grade key of a grade of the catalogue: "O1", "1084"
 * @param composition mass percents, by analysis or the grade's nominal
 * @param asQuenched hardness as quenched [HRC], measured, or well known for this quench
 * @param coupons hardness measured after known tempers, of this very bar
 */
public record Steel(
        Optional<String> grade, Optional<Composition> composition, OptionalDouble asQuenched, List<Coupon> coupons) {

    public Steel {
        coupons = List.copyOf(coupons);
    }

    public static Steel ofGrade(String key) {
        return new Steel(Optional.of(key), Optional.empty(), OptionalDouble.empty(), List.of());
    }

    public static Steel of(Composition composition) {
        return new Steel(Optional.empty(), Optional.of(composition), OptionalDouble.empty(), List.of());
    }

    /** The same steel, its composition known too. */
    public Steel with(Composition known) {
        return new Steel(grade, Optional.of(known), asQuenched, coupons);
    }

    /** The same steel, its hardness as quenched known [HRC]. */
    public Steel asQuenched(double hrc) {
        return new Steel(grade, composition, OptionalDouble.of(hrc), coupons);
    }

    /** The same steel, with test pieces of this very bar tempered and measured. */
    public Steel with(List<Coupon> measured) {
        return new Steel(grade, composition, asQuenched, measured);
    }
}
