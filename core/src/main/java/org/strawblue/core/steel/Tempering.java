package org.strawblue.core.steel;

import java.util.List;
import java.util.function.Function;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.history.Trace;
import org.strawblue.core.quantity.Band;

/** Tempering of the steel in hand: chooses the law that knows most about it, and asks it. */
public final class Tempering {

    private Tempering() {}

    /** The law for this steel: its grade's published curves first, its composition next; or why there is none. */
    public static Answer<TemperingLaw> law(Steel steel) {
        throw new UnsupportedOperationException();
    }

    /** Hardness [HRC] after one or more tempers, one after another. */
    public static Answer<Estimate> hardness(Steel steel, List<Temper> tempers) {
        return equivalent(steel, x -> x.equivalent(tempers));
    }

    /** Hardness [HRC] after a history of the metal's temperature. */
    public static Answer<Estimate> hardness(Steel steel, Trace trace) {
        return equivalent(steel, x -> x.equivalent(trace));
    }

    private static Answer<Estimate> equivalent(Steel steel, Function<HollomonJaffe, Temper> one) {
        return law(steel).then(law -> law.hardness(one.apply(law.exchange())));
    }

    /** The temperature to aim for so that the part ends within {@code wanted} [HRC] after one hold of this time [s]. */
    public static Answer<TemperChoice> temperature(Steel steel, Band wanted, double seconds) {
        throw new UnsupportedOperationException();
    }

    /** The time [s] at {@code kelvin} that softens as much as {@code temper}. */
    public static Answer<Estimate> equivalentTime(Steel steel, Temper temper, double kelvin) {
        throw new UnsupportedOperationException();
    }

    /** The temperature [K] that in {@code seconds} softens as much as {@code temper}. */
    public static Answer<Estimate> equivalentTemperature(Steel steel, Temper temper, double seconds) {
        throw new UnsupportedOperationException();
    }

    /** Hardness [HRC] after a hold of this time [s] at temperatures over the law's whole range, for drawing. */
    public static Answer<List<CurvePoint>> curve(Steel steel, double seconds) {
        throw new UnsupportedOperationException();
    }
}
