package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.history.Trace;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.source.Basis;

/** Tempering of the steel in hand: chooses the law that knows most about it, and asks it. */
public final class Tempering {

    private Tempering() {}

    /** Temperatures [K] for which a law may be asked. */
    public static Band temperatures() {
        return TemperingFigures.TEMPERATURES;
    }

    /** Times [s] for which a law may be asked. */
    public static Band times() {
        return TemperingFigures.TIMES;
    }

    /**
     * The law for this steel: of its grade's published curves and its composition the one with the smaller spread, the
     * composition also where the curves end; or why there is none.
     */
    public static Answer<TemperingLaw> law(Steel steel) {
        Optional<AnchoredCurve> curve =
                steel.grade().flatMap(g -> AnchoredCurve.ofGrade(g, steel.coupons(), steel.asQuenched()));
        Optional<Answer<TemperingLaw>> formula =
                steel.composition().map(c -> CompositionTempering.of(c, steel.coupons(), steel.asQuenched()));
        if (curve.isEmpty()) {
            return formula.orElseGet(() -> Answer.refused(unknown(steel)));
        }
        return Answer.of(
                formula.flatMap(Answer::value).map(f -> better(curve.get(), f)).orElse(curve.get()));
    }

    private static TemperingLaw better(AnchoredCurve curve, TemperingLaw formula) {
        return formula.spread() < curve.spread() ? formula : new CurveThenFormula(curve, formula);
    }

    /** Hardness [HRC] after one or more tempers, one after another. */
    public static Answer<Estimate> hardness(Steel steel, List<Temper> tempers) {
        return hardness(steel, exchange -> exchange.equivalent(tempers));
    }

    /**
     * Hardness [HRC] after a history of the metal's temperature. Refused where it counts as less at its peak than the
     * shortest test behind the law: a colour run by a torch.
     */
    public static Answer<Estimate> hardness(Steel steel, Trace trace) {
        return hardness(steel, exchange -> exchange.equivalent(trace));
    }

    private static Answer<Estimate> hardness(Steel steel, Function<HollomonJaffe, Temper> one) {
        return law(steel).then(law -> cautious(steel, law, one.apply(law.exchange())));
    }

    private static Answer<Estimate> cautious(Steel steel, TemperingLaw law, Temper temper) {
        Answer<Estimate> answer = law.hardness(temper);
        if (answer.value().isEmpty()) {
            return answer;
        }
        List<Finding> brittle = Embrittlement.findings(steel, temper.kelvin());
        if (brittle.isEmpty()) {
            return answer;
        }
        List<Finding> all = new ArrayList<>(answer.findings());
        all.addAll(brittle);
        return new Answer<>(answer.value(), all);
    }

    /** The temperature to aim for so that the part ends within {@code wanted} [HRC] after one hold of this time [s]. */
    public static Answer<TemperChoice> temperature(Steel steel, Band wanted, double seconds) {
        return law(steel)
                .then(law -> new TemperSearch(law, seconds).aimFor(wanted).then(choice -> {
                    List<Finding> brittle =
                            Embrittlement.findings(steel, choice.aim().value());
                    return Answer.of(choice, brittle);
                }));
    }

    /** The time [s] at {@code kelvin} that softens as much as {@code temper}. */
    public static Answer<Estimate> equivalentTime(Steel steel, Temper temper, double kelvin) {
        return law(steel).then(law -> TemperExchange.time(law, temper, kelvin));
    }

    /** The temperature [K] that in {@code seconds} softens as much as {@code temper}. */
    public static Answer<Estimate> equivalentTemperature(Steel steel, Temper temper, double seconds) {
        return law(steel).then(law -> TemperExchange.temperature(law, temper, seconds));
    }

    /** Hardness [HRC] after a hold of this time [s] at temperatures over the law's whole range, for drawing. */
    public static Answer<List<CurvePoint>> curve(Steel steel, double seconds) {
        return law(steel).then(law -> new TemperSearch(law, seconds).curve());
    }

    /** Half the 80 % interval of the Hollomon–Jaffe constant between steels. */
    public static double exchangeSpread() {
        return TemperExchange.SD;
    }

    /** What the exchange of time for temperature rests on. */
    public static List<Basis> exchangeBases() {
        return TemperExchange.bases();
    }

    private static Finding unknown(Steel steel) {
        return new Finding.Stop(
                Phrase.of("No tempering curve is known of "
                        + steel.grade().map(g -> "grade " + g).orElse("this steel")),
                Phrase.of("Neither a published curve nor a composition is at hand to reckon from."),
                Phrase.of("Name a grade that has one, give the composition, or measure test pieces."));
    }
}
