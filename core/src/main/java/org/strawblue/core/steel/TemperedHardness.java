package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Validity;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;

/** Turns a law's expectation, and what is known of this bar, into an answer: limits, interval, findings. */
final class TemperedHardness {

    private final TemperingPrior prior;
    private final TestPieces pieces;
    private final double halfWidths;
    private final List<Finding> standing;
    private final SortedSet<Basis> bases;
    private final Validity temperatures;
    private final Validity times;

    /**
     * @param k half-width of the 80 % interval in standard deviations
     * @param standing findings that go with every answer
     */
    TemperedHardness(
            String law,
            TemperingPrior prior,
            List<Coupon> coupons,
            OptionalDouble asQuenched,
            double k,
            List<Finding> standing,
            List<Basis> bases) {
        this.prior = prior;
        this.pieces = TestPieces.of(prior, coupons, asQuenched);
        this.halfWidths = k;
        this.standing = List.copyOf(standing);
        this.bases = new TreeSet<>(bases);
        this.temperatures = new Validity(law, "Tempering temperature", TemperingFigures.TEMPERATURES);
        this.times = new Validity(law, "Time at temperature", TemperingFigures.TIMES);
    }

    Answer<Estimate> at(Temper temper) {
        List<Finding> findings = new ArrayList<>(standing);
        temperatures.check(temper.kelvin()).ifPresent(findings::add);
        times.check(temper.seconds()).ifPresent(findings::add);
        if (findings.size() > standing.size()) {
            return Answer.refused(findings);
        }
        Prediction found = predict(temper.kelvin(), temper.seconds());
        if (Double.isNaN(found.hrc())) {
            return Answer.refused(findings);
        }
        about(temper, found.hrc(), findings);
        return Answer.of(
                Estimate.of(
                        Dimension.HARDNESS, found.hrc(), found.hrc() - found.half(), found.hrc() + found.half(), bases),
                findings);
    }

    /** Hardness and half its 80 % interval [HRC]. */
    record Prediction(double hrc, double half) {}

    Prediction predict(double kelvin, double seconds) {
        double z = TemperingFigures.reduced(prior.exchange().parameter(kelvin, seconds));
        double u = prior.decades(seconds);
        double mean = prior.mean(z);
        double variance = prior.covariance(z, u, z, u);
        if (!pieces.none()) {
            double[] with = pieces.with(z, u);
            mean += pieces.shift(with);
            variance = Math.max(0, variance - pieces.known(with));
        }
        double half = halfWidths * Math.sqrt(variance + HeatSpread.FITTED.reading(z, mean));
        return new Prediction(
                mean, seconds < TemperingFigures.SHORT ? Math.max(half, TemperingFigures.SHORT_HALF_WIDTH) : half);
    }

    private static void about(Temper temper, double hrc, List<Finding> findings) {
        if (temper.seconds() < TemperingFigures.SHORT) {
            findings.add(new Finding.Caution(
                    Phrase.of("{} is short for a temper", Quantity.time(temper.seconds())),
                    Phrase.of(
                            "Below {} the metal lags behind its surroundings, and tests disagree: parts come out harder"
                                    + " than reckoned.",
                            Quantity.time(TemperingFigures.SHORT)),
                    Phrase.of("Count the time the metal itself is hot, or temper longer at a lower temperature.")));
        }
        if (temper.seconds() > TemperingFigures.LONGEST_TEST) {
            findings.add(new Finding.Note(
                    Phrase.of(
                            "{} is longer than any test known here, {}",
                            Quantity.time(temper.seconds()),
                            Quantity.time(TemperingFigures.LONGEST_TEST)),
                    Phrase.of("The exchange of time for temperature is taken on beyond it; the interval widens."),
                    Phrase.of("Measure on a test piece if it matters.")));
        }
        if (hrc < TemperingFigures.SOFT) {
            findings.add(new Finding.Note(
                    Phrase.of(
                            "{} lies below {}, where the C scale ends",
                            Quantity.hardness(hrc),
                            Quantity.hardness(TemperingFigures.SOFT)),
                    Phrase.of("Published readings down there scatter twice as much."),
                    Phrase.of("Take it as soft; measure on another scale.")));
        }
    }
}
