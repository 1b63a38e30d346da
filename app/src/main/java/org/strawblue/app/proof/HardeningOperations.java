package org.strawblue.app.proof;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.heat.Hardening;
import org.strawblue.core.heat.HardeningPlan;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.A255Hardness;
import org.strawblue.core.steel.A255IdealDiameter;
import org.strawblue.core.steel.AndrewsCriticalPoints;
import org.strawblue.core.steel.AndrewsLinear;
import org.strawblue.core.steel.Barbier;
import org.strawblue.core.steel.Composition;
import org.strawblue.core.steel.CriticalPoints;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.Grossmann;
import org.strawblue.core.steel.Just;
import org.strawblue.core.steel.Quenchants;
import org.strawblue.core.steel.Quenched;
import org.strawblue.core.steel.StevenHaynes;

/** Hardening: its laws one by one, and whole plans. */
final class HardeningOperations {

    private static final double INCH = 0.0254;

    private HardeningOperations() {}

    static Map<String, Operation> all() {
        Map<String, Operation> all = new HashMap<>();
        all.put("grade-named", in -> Result.word(named(in)));
        all.put("martensite-hardness", in -> Result.of(A255Hardness.full().of(in.number("C"))));
        all.put("half-martensite-hardness", in -> Result.of(A255Hardness.half().of(in.number("C"))));
        all.put("just-hardness", in -> Result.of(new Just().of(in.number("C"))));
        all.put("ideal-diameter", in -> Result.of(new A255IdealDiameter().of(composition(in))));
        all.put("critical-diameter", HardeningOperations::criticalDiameter);
        all.put("uncorrected-critical-diameter", HardeningOperations::uncorrected);
        all.put("corrected-critical-diameter", HardeningOperations::corrected);
        all.put("cylinder-root", in -> Result.number(Grossmann.firstRoot(in.number("biot"))));
        all.put("martensite-start", in -> Result.of(new Barbier().of(composition(in))));
        all.put("martensite-start-andrews", in -> Result.of(new AndrewsLinear().of(composition(in))));
        all.put("martensite-start-steven-haynes", in -> Result.of(new StevenHaynes().of(composition(in))));
        all.put("martensite-start-total-carbon", in -> Result.of(new AndrewsLinear().unchecked(composition(in))));
        all.put("upper-critical-point", in -> Result.of(points(in).map(CriticalPoints::ac3)));
        all.put("lower-critical-point", in -> Result.of(points(in).map(CriticalPoints::ac1)));
        all.put(
                "hardened-surface",
                in -> Result.of(plan(in).map(p -> p.quenched().surface())));
        all.put(
                "hardened-centre",
                in -> Result.of(plan(in).map(p -> p.quenched().centre())));
        all.put("hardened-depth", in -> Result.of(plan(in).map(p -> p.quenched().depth())));
        all.put("hardening-verdict", HardeningOperations::verdict);
        all.put("hard-through-at-constant-severity", HardeningOperations::constantSeverity);
        all.put("steel-enthalpy", HardeningOperations::enthalpy);
        all.put("steel-enthalpy-constant-heat", HardeningOperations::constantHeat);
        all.put("steel-conductivity", in -> Result.number(SteelProperties.conductivity(in.temperature("temperature"))));
        all.put(
                "steel-specific-heat",
                in -> Result.number(SteelProperties.specificHeat(in.temperature("temperature"))));
        return all;
    }

    private static String named(Inputs in) {
        return Grades.find(in.text("word")).value().map(Grade::name).orElse(Result.REFUSED);
    }

    /** The elements given, or the nominal composition of the grade named, with the elements given put in its place. */
    private static Composition composition(Inputs in) {
        Composition base = in.has("grade")
                ? Grades.of(in.text("grade")).composition()
                : Composition.of(new EnumMap<>(Element.class));
        for (Element element : Element.values()) {
            base = in.has(element.symbol()) ? base.with(element, in.number(element.symbol())) : base;
        }
        return base;
    }

    private static Answer<CriticalPoints> points(Inputs in) {
        return new AndrewsCriticalPoints().of(composition(in));
    }

    private static Result criticalDiameter(Inputs in) {
        return length(Grossmann.criticalDiameter(in.length("ideal"), in.number("severity_per_inch") / INCH));
    }

    /** Control: A255 as it stands, for a steel that keeps carbide undissolved. */
    private static Result uncorrected(Inputs in) {
        Composition austenite = composition(in);
        double ideal =
                new A255IdealDiameter().of(austenite).value().orElseThrow().value();
        return length(Grossmann.criticalDiameter(ideal, in.number("severity_per_inch") / INCH));
    }

    private static Result corrected(Inputs in) {
        double ideal = new A255IdealDiameter()
                .of(Grades.of(in.text("grade")))
                .value()
                .orElseThrow()
                .value();
        return length(Grossmann.criticalDiameter(ideal, in.number("severity_per_inch") / INCH));
    }

    private static Answer<HardeningPlan> plan(Inputs in) {
        double d = in.length("diameter");
        return Hardening.plan(
                Grades.of(in.text("grade")),
                new PartShape.RoundBar(
                        d, in.optionalSi("length", Dimension.LENGTH).orElse(5 * d)),
                Quenchants.of(in.text("quench")),
                HeatSources.of(in.optionalText("source").orElse("kiln")));
    }

    private static Result verdict(Inputs in) {
        return Result.word(
                plan(in).value().map(p -> word(p.quenched().verdict())).orElse(Result.REFUSED));
    }

    private static String word(Quenched.Verdict verdict) {
        return switch (verdict) {
            case THROUGH -> "through";
            case LIKELY_THROUGH -> "likely through";
            case SHELL -> "shell";
            case UNSURE -> "unsure";
            case SOFT -> "soft";
        };
    }

    /** Control: the classical reckoning with one severity for the whole quench, 95 % martensite. */
    private static Result constantSeverity(Inputs in) {
        double ideal = new A255IdealDiameter()
                .of(Grades.of(in.text("grade")))
                .value()
                .orElseThrow()
                .value();
        double limit = Grossmann.criticalDiameter(0.7 * ideal, in.number("severity_per_inch") / INCH);
        return Result.word(in.length("diameter") <= limit ? "through" : "not through");
    }

    private static Result enthalpy(Inputs in) {
        return Result.number(SteelProperties.enthalpy(in.temperature("from"), in.temperature("to")) / 1000);
    }

    /** Control: specific heat taken as at the start all the way, so without the change's own heat. */
    private static Result constantHeat(Inputs in) {
        double from = in.temperature("from");
        return Result.number(SteelProperties.specificHeat(from) * (in.temperature("to") - from) / 1000);
    }

    private static Result length(double metres) {
        return Result.of(new Quantity(Dimension.LENGTH, metres));
    }
}
