package org.strawblue.core.pyrometry;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/**
 * Two crayons that prove a temperature: one must turn slick, the other must stay dry.
 *
 * @param slick rating of the one that must melt [K]
 * @param dry rating of the one that must not [K]
 * @param proven where the steel then is, at 90 % on either side [K]
 */
public record CrayonChoice(double slick, double dry, Band proven) {

    /** The pair from a drawer that proves a band [K] best; the drawer's empty list stands for all that are sold. */
    public static Answer<CrayonChoice> of(Band wanted, Crayons crayons) {
        boolean any = crayons.ratings().isEmpty();
        Optional<CrayonChoice> best = best(wanted, any ? CrayonLadder.ratings() : crayons.ratings());
        CrayonChoice buy = best(wanted, CrayonLadder.ratings()).orElseThrow();
        if (best.isEmpty()) {
            return Answer.refused(buyStop(buy));
        }
        boolean enough = best.get().overhang(wanted) <= buy.overhang(wanted) + gap(Rated.of(buy.slick).error);
        return enough ? Answer.of(best.get()) : Answer.of(best.get(), buyCaution(best.get(), buy));
    }

    /** Least reach beyond the band at both ends together; of equals, the widest pair. */
    private static Optional<CrayonChoice> best(Band wanted, List<Double> ratings) {
        List<Rated> crayons = ratings.stream().map(Rated::of).toList();
        CrayonChoice best = null;
        for (Rated slick : crayons) {
            for (Rated dry : crayons) {
                CrayonChoice pair = slick.with(dry);
                boolean apart = dry.kelvin - slick.kelvin >= gap(slick.error);
                if (apart && (best == null || pair.better(best, wanted))) {
                    best = pair;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Two crayons nearer together than the error of their difference prove nothing. */
    private static double gap(double error) {
        return Math.sqrt(2) * error;
    }

    /** A rating and its error at 90 % [K]. */
    private record Rated(double kelvin, double error) {

        static Rated of(double kelvin) {
            Estimate truth = new Crayons(List.of()).truth(kelvin);
            return new Rated(kelvin, truth.high() - truth.value());
        }

        CrayonChoice with(Rated dry) {
            return new CrayonChoice(
                    kelvin, dry.kelvin, Band.between(Dimension.TEMPERATURE, kelvin - error, dry.kelvin + dry.error));
        }
    }

    private boolean better(CrayonChoice other, Band wanted) {
        double less = other.overhang(wanted) - overhang(wanted);
        return less > 1e-9 || less > -1e-9 && dry - slick > other.dry - other.slick;
    }

    private double overhang(Band wanted) {
        return Math.max(wanted.low() - slick, 0)
                + Math.max(dry - wanted.high(), 0)
                + Math.max(slick - wanted.high(), 0)
                + Math.max(wanted.low() - dry, 0);
    }

    private static Finding buyStop(CrayonChoice buy) {
        return new Finding.Stop(
                Phrase.of("no two crayons here lie far enough apart to prove a temperature"),
                Phrase.of("It takes one that melts and one that does not."),
                Phrase.of("Get crayons of {} and {}.", Quantity.temperature(buy.slick), Quantity.temperature(buy.dry)));
    }

    private static Finding buyCaution(CrayonChoice have, CrayonChoice buy) {
        return new Finding.Caution(
                Phrase.of(
                        "the crayons here prove only that the steel is between {} and {}",
                        Quantity.temperature(have.proven.low()),
                        Quantity.temperature(have.proven.high())),
                Phrase.of("Others commonly sold would prove it closer."),
                Phrase.of("Get crayons of {} and {}.", Quantity.temperature(buy.slick), Quantity.temperature(buy.dry)));
    }
}
