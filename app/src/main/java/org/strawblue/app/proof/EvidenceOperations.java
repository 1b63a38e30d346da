package org.strawblue.app.proof;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.evidence.advice.Adviser;
import org.strawblue.core.evidence.advice.Costs;
import org.strawblue.core.evidence.diagnosis.Diagnosis;
import org.strawblue.core.evidence.diagnosis.Known;
import org.strawblue.core.evidence.diagnosis.Ranked;
import org.strawblue.core.evidence.diagnosis.Topic;
import org.strawblue.core.evidence.diagnosis.UnknownSteel;
import org.strawblue.core.evidence.judge.Judge;
import org.strawblue.core.evidence.judge.Judgement;
import org.strawblue.core.evidence.judge.Situation;
import org.strawblue.core.evidence.learn.OvenCost;
import org.strawblue.core.evidence.learn.OvenLog;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.evidence.observe.Seen;
import org.strawblue.core.history.Trace;
import org.strawblue.core.pyrometry.Thermocouple;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.Quenchants;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;

/** What an oven's error costs, what to do with a part, why it came out so, what steel it may be. */
final class EvidenceOperations {

    private static final Thermocouple BEAD = new Thermocouple("K", 2);

    private EvidenceOperations() {}

    static Map<String, Operation> all() {
        return Map.of(
                "oven-offset-cost", EvidenceOperations::offsetCost,
                "deed", EvidenceOperations::deed,
                "likeliest-cause", EvidenceOperations::cause,
                "commonest-cause", EvidenceOperations::commonest,
                "family-advised", EvidenceOperations::family,
                "family-guessed", in -> Result.word(first(steel(in))));
    }

    /** Change of hardness by an oven that has another temperature than it is set to, read off its log. */
    private static Result offsetCost(Inputs in) {
        Trace log = steady(in.temperature("has"), in.time("time"));
        return OvenLog.of(log, OptionalDouble.of(in.temperature("set")), BEAD)
                .then(l -> OvenCost.of(l, Steel.ofGrade(in.text("grade")), in.time("time")))
                .value()
                .flatMap(OvenCost::byOffset)
                .map(Result::of)
                .orElse(Result.word(Result.REFUSED));
    }

    /** A log with a reading a minute. */
    private static Trace steady(double kelvin, double seconds) {
        double[] times = new double[1 + (int) (seconds / 60)];
        double[] kelvins = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = 60.0 * i;
            kelvins[i] = kelvin;
        }
        return new Trace(times, kelvins);
    }

    /** What to do with a part whose heat a thermocouple on it told. */
    private static Result deed(Inputs in) {
        Steel steel = Steel.ofGrade(in.text("grade"));
        Observation probe = new Observation.PartReads(in.temperature("temperature"), BEAD, Seen.SOME_TIME);
        Situation heat = Situation.unknownHeat(OptionalDouble.of(in.time("time")), Optional.of(steel));
        Judgement judged = Judge.of(heat, List.of(probe));
        return Adviser.of(judged, steel, wanted(in), Costs.usual(), List.of())
                .map(a -> Result.word(a.deed().name().toLowerCase(Locale.ROOT)))
                .orElse(Result.word(Result.REFUSED));
    }

    private static Band wanted(Inputs in) {
        return new Band(
                Dimension.HARDNESS, in.si("at-least", Dimension.HARDNESS), in.si("at-most", Dimension.HARDNESS));
    }

    private static Result cause(Inputs in) {
        return Result.word(first(diagnosis(in).causes()));
    }

    /** Control: the cause that is met most often, whatever was seen. */
    private static Result commonest(Inputs in) {
        return Result.word(
                first(Diagnosis.of(symptom(in), Known.NOTHING, Map.of()).causes()));
    }

    private static Diagnosis diagnosis(Inputs in) {
        OptionalDouble heat = in.optionalSi("hardened-from", Dimension.TEMPERATURE);
        OptionalDouble soak = in.optionalSi("heated-for", Dimension.TIME);
        Optional<Temper> temper = in.has("tempered-at")
                ? Optional.of(new Temper(in.temperature("tempered-at"), in.time("tempered-for")))
                : Optional.empty();
        Known known = new Known(
                in.optionalText("grade").map(Grades::of),
                Optional.empty(),
                in.optionalText("quench").flatMap(q -> Quenchants.find(q).value()),
                Optional.empty(),
                heat,
                soak,
                temper,
                in.has("at-least") ? Optional.of(wanted(in)) : Optional.empty());
        return Diagnosis.of(symptom(in), known, seen(in));
    }

    private static Topic symptom(Inputs in) {
        return Topic.find(in.text("symptom"))
                .orElseThrow(() -> new IllegalArgumentException("no symptom '" + in.text("symptom") + "'"));
    }

    /** {@code seen=oil:soft water:hard} */
    private static Map<String, String> seen(Inputs in) {
        Map<String, String> seen = new LinkedHashMap<>();
        for (String one : in.optionalText("seen").orElse("").split(" ")) {
            String[] pair = one.split(":", 2);
            if (pair.length == 2) {
                seen.put(pair[0], pair[1]);
            }
        }
        return seen;
    }

    private static Result family(Inputs in) {
        return UnknownSteel.of(seen(in)).advice().map(f -> Result.word(f.key())).orElse(Result.word(Result.REFUSED));
    }

    private static List<Ranked> steel(Inputs in) {
        return UnknownSteel.of(seen(in)).families();
    }

    private static String first(List<Ranked> ranked) {
        return ranked.get(0).cause().key();
    }
}
