package org.strawblue.core.evidence.learn;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.history.Trace;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;

/**
 * What an oven's error costs in hardness: H at its true mean less H at its setting, and H along its swing less H at its mean. The
 * law's own error is in both and drops out of the difference.
 *
 * <p>By the swing: of a part so thin that it follows the air; a thicker one feels less.
 *
 * @param asSet hardness were the oven at its setting [HRC]; absent where that is not known
 * @param asIs hardness at its true mean [HRC]
 * @param byOffset what the offset costs, negative where it softens [HRC]
 * @param bySwing what the swing costs at most [HRC]
 */
public record OvenCost(
        Optional<Estimate> asSet, Estimate asIs, Optional<Estimate> byOffset, Optional<Estimate> bySwing) {

    private static final int POINTS = 24;
    private static final int MOST_POINTS = 4000;

    /** Of a temper of so many seconds in this oven. */
    public static Answer<OvenCost> of(OvenLog log, Steel steel, double seconds) {
        Answer<Estimate> asIs = hardness(steel, log.mean().value(), seconds);
        return asIs.then(is -> {
            Optional<Estimate> asSet = log.set().isPresent()
                    ? hardness(steel, log.set().getAsDouble(), seconds).value()
                    : Optional.empty();
            return Answer.of(new OvenCost(
                    asSet,
                    withMean(is, log, steel, seconds),
                    asSet.map(s -> byOffset(s, is, log, steel, seconds)),
                    bySwing(is, log, steel, seconds)));
        });
    }

    private static Answer<Estimate> hardness(Steel steel, double kelvin, double seconds) {
        return Tempering.hardness(steel, List.of(new Temper(kelvin, seconds)));
    }

    private static double at(Steel steel, double kelvin, double seconds, double otherwise) {
        return hardness(steel, kelvin, seconds).value().map(Estimate::value).orElse(otherwise);
    }

    /** The hotter end of the mean gives the softer end of the hardness, as a rule. */
    private static Estimate withMean(Estimate is, OvenLog log, Steel steel, double seconds) {
        double hot = at(steel, log.mean().high(), seconds, is.value());
        double cold = at(steel, log.mean().low(), seconds, is.value());
        return is.widened(
                Math.max(0, is.value() - Math.min(hot, cold)),
                Math.max(0, Math.max(hot, cold) - is.value()),
                log.mean().bases());
    }

    private static Estimate byOffset(Estimate set, Estimate is, OvenLog log, Steel steel, double seconds) {
        double value = is.value() - set.value();
        double hot = at(steel, log.mean().high(), seconds, is.value()) - set.value();
        double cold = at(steel, log.mean().low(), seconds, is.value()) - set.value();
        return difference(value, hot, cold, union(set, log.mean()));
    }

    private static Optional<Estimate> bySwing(Estimate is, OvenLog log, Steel steel, double seconds) {
        if (log.period().isEmpty()) {
            return Optional.empty();
        }
        double period = log.period().get().value();
        Optional<Double> middle = along(log, log.swing().value(), period, steel, seconds);
        Optional<Double> least = along(log, log.swing().low(), period, steel, seconds);
        Optional<Double> most = along(log, log.swing().high(), period, steel, seconds);
        return middle.map(m -> difference(
                m - is.value(), least.orElse(m) - is.value(), most.orElse(m) - is.value(), union(is, log.swing())));
    }

    private static Optional<Double> along(OvenLog log, double swing, double period, Steel steel, double seconds) {
        int n = (int) Math.max(POINTS, Math.min(MOST_POINTS, Math.ceil(POINTS * seconds / period)));
        double[] times = new double[n + 1];
        double[] kelvin = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            times[i] = seconds * i / n;
            kelvin[i] = log.mean().value() + swing * Math.sin(2 * Math.PI * times[i] / period);
        }
        return Tempering.hardness(steel, new Trace(times, kelvin)).value().map(Estimate::value);
    }

    private static Estimate difference(double value, double a, double b, Collection<Basis> bases) {
        double low = Math.min(value, Math.min(a, b));
        double high = Math.max(value, Math.max(a, b));
        return Estimate.of(Dimension.HARDNESS, value, low, high, bases);
    }

    private static Collection<Basis> union(Estimate a, Estimate b) {
        TreeSet<Basis> all = new TreeSet<>(a.bases());
        all.addAll(b.bases());
        return all;
    }
}
