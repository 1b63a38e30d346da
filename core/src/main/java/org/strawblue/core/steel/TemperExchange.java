package org.strawblue.core.steel;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Validity;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/**
 * "Twenty minutes here is one hour there": tempers of equal Hollomon–Jaffe parameter. The interval comes from the
 * constant's own spread between steels.
 */
final class TemperExchange {

    private static final Constants TABLE = Constants.of(TemperExchange.class, "tempering-law.csv");
    /** Half the 80 % interval of the constant. */
    static final double SD = TABLE.number("exchange_sd") * HeatSpread.K_KNOWN;

    private static final Validity TIMES =
            new Validity("The exchange of time for temperature", "Time", TemperingFigures.TIMES);
    private static final Validity TEMPERATURES =
            new Validity("The exchange of time for temperature", "Temperature", TemperingFigures.TEMPERATURES);

    private TemperExchange() {}

    /** Time [s] at {@code kelvin} of equal effect. */
    static Answer<Estimate> time(TemperingLaw law, Temper temper, double kelvin) {
        return check(TEMPERATURES, kelvin, temper)
                .then(k -> check(TIMES, law.exchange().seconds(parameter(law.exchange(), temper), kelvin), temper)
                        .map(t -> estimate(Dimension.TIME, law, x -> x.seconds(parameter(x, temper), kelvin))));
    }

    /** Temperature [K] that has the same effect in this time [s]. */
    static Answer<Estimate> temperature(TemperingLaw law, Temper temper, double seconds) {
        return check(TIMES, seconds, temper)
                .then(t -> check(
                                TEMPERATURES, law.exchange().kelvin(parameter(law.exchange(), temper), seconds), temper)
                        .map(k -> estimate(Dimension.TEMPERATURE, law, x -> x.kelvin(parameter(x, temper), seconds))));
    }

    private static double parameter(HollomonJaffe exchange, Temper temper) {
        return exchange.parameter(temper.kelvin(), temper.seconds());
    }

    private static Answer<Double> check(Validity validity, double value, Temper temper) {
        return TEMPERATURES
                .check(temper.kelvin())
                .or(() -> TIMES.check(temper.seconds()))
                .or(() -> validity.check(value))
                .map(Answer::<Double>refused)
                .orElse(Answer.of(value));
    }

    private static Estimate estimate(Dimension dimension, TemperingLaw law, ToDoubleFunction<HollomonJaffe> of) {
        double c = law.exchange().constant();
        double value = of.applyAsDouble(law.exchange());
        double one = of.applyAsDouble(new HollomonJaffe(c - SD));
        double other = of.applyAsDouble(new HollomonJaffe(c + SD));
        return Estimate.of(
                dimension,
                value,
                Math.min(value, Math.min(one, other)),
                Math.max(value, Math.max(one, other)),
                bases());
    }

    static List<Basis> bases() {
        return List.of(TABLE.basis("exchange_sd"), TABLE.basis("exchange_a"));
    }
}
