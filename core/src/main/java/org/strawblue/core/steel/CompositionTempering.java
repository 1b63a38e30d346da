package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;

/**
 * Tempered hardness from composition: HRC = φ(z, composition)·β + d, z the reduced Hollomon–Jaffe parameter, φ the terms
 * {1, √C, C} × {1, z, z²} and {1, z} for each of Mn, Si, Ni, Cr, Mo (tungsten counted), V and Al [mass %]; d the departure
 * of this heat, see {@link HeatSpread}, narrowed by whatever of the bar has been measured.
 *
 * <p>Range: plain-carbon and low-alloy steels within {@code tempering-limits.csv}, fully hardened; 90 to 710 °C, 40 s to
 * 100 h. Error on steels left out of the fit: 2.2 HRC root mean square above HRC 20, the 80 % interval ±2.7. Source: fitted
 * to the open tempering data of 1945, 1956 and 2010 by {@code verification/tempering/fit.py}.
 */
public final class CompositionTempering implements TemperingLaw, TemperingPrior {

    private static final String NAME = "The composition law of tempering";
    private static final Basis FIT = new Basis("tempering from composition", "tempering-data-raiipa", Standing.FITTED);
    private static final double HOUR = Units.of(Dimension.TIME, "h").toSi(1);

    private final HollomonJaffe exchange;
    private final CompositionFormula formula;
    private final double quenched;
    private final TemperedHardness hardness;

    private CompositionTempering(
            Composition steel, List<Coupon> coupons, OptionalDouble asQuenched, List<Finding> notes) {
        exchange = TemperingFigures.exchange(steel.c());
        formula = CompositionFormula.of(steel);
        quenched = asQuenched.isEmpty()
                ? Double.NaN
                : A255Hardness.full()
                        .held(steel.c())
                        .value()
                        .map(Estimate::value)
                        .orElse(Double.NaN);
        hardness = new TemperedHardness(
                NAME, this, coupons, asQuenched, halfWidths(coupons, asQuenched), notes, List.of(FIT));
    }

    /** The law for this composition, and what is known of the bar; refused outside the range of the data. */
    public static Answer<TemperingLaw> of(Composition steel, List<Coupon> coupons, OptionalDouble asQuenched) {
        List<Finding> stops = new ArrayList<>();
        List<Finding> notes = new ArrayList<>();
        for (TemperingLimit limit : TemperingLimit.ALL) {
            Optional<Finding> finding = limit.check(steel);
            finding.ifPresent(f -> (f instanceof Finding.Stop ? stops : notes).add(f));
        }
        return stops.isEmpty()
                ? Answer.of(new CompositionTempering(steel, coupons, asQuenched, notes))
                : Answer.refused(stops);
    }

    private static double halfWidths(List<Coupon> coupons, OptionalDouble asQuenched) {
        if (!coupons.isEmpty()) {
            return HeatSpread.K_KNOWN;
        }
        return asQuenched.isPresent() ? HeatSpread.K_QUENCHED : HeatSpread.K_UNKNOWN;
    }

    @Override
    public HollomonJaffe exchange() {
        return exchange;
    }

    @Override
    public Answer<Estimate> hardness(Temper temper) {
        return hardness.at(temper);
    }

    @Override
    public double spread() {
        return Math.sqrt(covariance(0, 0, 0, 0)) * HeatSpread.K_UNKNOWN / Normal.HALF_OF_80;
    }

    @Override
    public double decades(double seconds) {
        return Math.log10(seconds / HOUR);
    }

    @Override
    public double mean(double z) {
        return formula.mean(z);
    }

    @Override
    public double quenched() {
        return quenched;
    }

    @Override
    public double covariance(double z1, double u1, double z2, double u2) {
        return formula.covariance(z1, z2) + HeatSpread.FITTED.covariance(1, z1, u1, z2, u2);
    }
}
