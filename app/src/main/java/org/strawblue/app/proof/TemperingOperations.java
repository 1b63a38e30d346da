package org.strawblue.app.proof;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Composition;
import org.strawblue.core.steel.Duties;
import org.strawblue.core.steel.Duty;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.HardnessConversion;
import org.strawblue.core.steel.HollomonJaffe;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;

/** Tempering, hardness by duty, hardness scales. */
final class TemperingOperations {

    private TemperingOperations() {}

    static Map<String, Operation> all() {
        return Map.of(
                "tempered-hardness", in -> Result.of(hardness(in, temper(in))),
                "tempered-hardness-holds", TemperingOperations::holds,
                "temper-equal-effect-temperature", TemperingOperations::equalTemperature,
                "temper-equal-effect-natural-logarithm", TemperingOperations::naturalLogarithm,
                "tempered-hardness-time-ignored", TemperingOperations::timeIgnored,
                "tempered-hardness-wrong-constant", TemperingOperations::wrongConstant,
                "duty-hardness", in -> Result.of(Duties.hardness(duty(in), in.text("grade"))),
                "hardness-vickers", in -> Result.of(HardnessConversion.vickers(in.si("hardness", Dimension.HARDNESS))),
                "hardness-rockwell",
                        in -> Result.of(HardnessConversion.rockwell(in.si("hardness", Dimension.HARDNESS_VICKERS))));
    }

    private static Answer<Estimate> hardness(Inputs in, Temper temper) {
        int times = in.has("tempers") ? (int) in.number("tempers") : 1;
        return Tempering.hardness(steel(in), Collections.nCopies(times, temper));
    }

    /** Whether the 80 % interval holds a measured hardness: "inside" or "outside". */
    private static Result holds(Inputs in) {
        double measured = in.si("measured", Dimension.HARDNESS);
        return hardness(in, temper(in))
                .value()
                .map(e -> Result.word(e.band().contains(measured) ? "inside" : "outside"))
                .orElse(Result.word(Result.REFUSED));
    }

    private static Result equalTemperature(Inputs in) {
        HollomonJaffe exchange = new HollomonJaffe(in.number("constant"));
        Temper temper = temper(in);
        return Result.of(Quantity.temperature(
                exchange.kelvin(exchange.parameter(temper.kelvin(), temper.seconds()), in.time("other-time"))));
    }

    /** Control: the constant belongs to the decimal logarithm. */
    private static Result naturalLogarithm(Inputs in) {
        double e = Math.log(10);
        HollomonJaffe exchange = new HollomonJaffe(in.number("constant") / e);
        Temper temper = temper(in);
        return Result.of(Quantity.temperature(
                exchange.kelvin(exchange.parameter(temper.kelvin(), temper.seconds()), in.time("other-time"))));
    }

    /** Control: only the temperature counts. */
    private static Result timeIgnored(Inputs in) {
        return Result.of(hardness(in, new Temper(in.temperature("temperature"), in.time("known-time"))));
    }

    /** Control: time and temperature exchanged with a constant of one. */
    private static Result wrongConstant(Inputs in) {
        double known = in.time("known-time");
        Temper temper = temper(in);
        HollomonJaffe none = new HollomonJaffe(1);
        return Result.of(hardness(
                in, new Temper(none.kelvin(none.parameter(temper.kelvin(), temper.seconds()), known), known)));
    }

    private static Temper temper(Inputs in) {
        return new Temper(in.temperature("temperature"), in.time("time"));
    }

    private static Steel steel(Inputs in) {
        Map<Element, Double> percent = new EnumMap<>(Element.class);
        for (Element element : Element.values()) {
            if (in.has(element.symbol())) {
                percent.put(element, in.number(element.symbol()));
            }
        }
        Steel steel = in.has("grade") ? Steel.ofGrade(in.text("grade")) : Steel.of(Composition.of(percent));
        return in.has("as-quenched") ? steel.asQuenched(in.si("as-quenched", Dimension.HARDNESS)) : steel;
    }

    private static Duty duty(Inputs in) {
        return Duties.find(in.text("duty"))
                .orElseThrow(() -> new IllegalArgumentException("no duty '" + in.text("duty") + "'"));
    }
}
