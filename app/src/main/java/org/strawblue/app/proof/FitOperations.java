package org.strawblue.app.proof;

import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.fit.Decarburisation;
import org.strawblue.core.fit.Fits;
import org.strawblue.core.fit.Limits;
import org.strawblue.core.fit.Reamer;
import org.strawblue.core.fit.SizeChange;
import org.strawblue.core.fit.ToleranceGrades;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;

/** Limits and fits, reamers, loss of carbon, size change. */
final class FitOperations {

    private FitOperations() {}

    static Map<String, Operation> all() {
        return Map.of(
                "limit-upper", in -> limit(in, Band::high),
                "limit-lower", in -> limit(in, Band::low),
                "fit-greatest-clearance", in -> clearance(in, Band::high),
                "fit-least-clearance", in -> clearance(in, Band::low),
                "tolerance", FitOperations::tolerance,
                "tolerance-by-formula", FitOperations::toleranceByFormula,
                "reamer-largest", in -> reamer(in, Band::high),
                "reamer-smallest", in -> reamer(in, Band::low),
                "decarburised-depth", FitOperations::depth,
                "size-change-signs", FitOperations::signs);
    }

    /** Deviation from nominal. */
    private static Result limit(Inputs in, ToDoubleFunction<Band> side) {
        double nominal = in.length("nominal");
        return Limits.of(nominal, in.text("zone"))
                .value()
                .map(b -> length(side.applyAsDouble(b) - nominal))
                .orElse(Result.word(Result.REFUSED));
    }

    private static Result clearance(Inputs in, ToDoubleFunction<Band> side) {
        String fit = in.optionalText("fit").orElseGet(() -> in.text("hole") + "/" + in.text("shaft"));
        return Fits.of(in.length("nominal"), fit, false)
                .value()
                .map(f -> length(side.applyAsDouble(f.clearance())))
                .orElse(Result.word(Result.REFUSED));
    }

    private static Result tolerance(Inputs in) {
        return length(ToleranceGrades.of(in.length("nominal"), (int) in.number("grade"))
                .orElseThrow());
    }

    /** Control: the formula behind the table, i = a ∛D + b D in µm with D in mm, without the table's rounding. */
    private static Result toleranceByFormula(Inputs in) {
        double mean = Math.sqrt(in.number("over") * in.number("upto"));
        double unit = in.number("root") * Math.cbrt(mean) + in.number("straight") * mean;
        return length(in.number("multiple") * unit / 1e6);
    }

    private static Result reamer(Inputs in, ToDoubleFunction<Band> side) {
        double nominal = in.length("nominal");
        return Limits.of(nominal, in.text("zone"))
                .value()
                .map(hole -> length(side.applyAsDouble(Reamer.forHole(hole)) - nominal))
                .orElse(Result.word(Result.REFUSED));
    }

    private static Result depth(Inputs in) {
        return length(Decarburisation.depth(
                in.number("diffusion"), in.time("time"), in.number("left") / in.number("carbon")));
    }

    /** Whether a size can be told to grow. */
    private static Result signs(Inputs in) {
        Feature feature =
                new Feature("size", Feature.Kind.valueOf(in.text("kind")), in.length("nominal"), Optional.empty());
        double growth = in.number("growth");
        Estimate change = SizeChange.of(
                feature, Estimate.of(Dimension.FRACTION, growth, growth * (1 - 1e-9), growth * (1 + 1e-9)));
        return Result.word(change.low() < 0 && change.high() > 0 ? "either" : change.low() > 0 ? "grows" : "shrinks");
    }

    private static Result length(double metres) {
        return new Result.Number(Quantity.length(metres));
    }
}
