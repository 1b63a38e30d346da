package org.strawblue.app.proof;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.Bergstraesser;
import org.strawblue.core.spring.Buckling;
import org.strawblue.core.spring.ClassicalRate;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.CoilGrowth;
import org.strawblue.core.spring.DirectShear;
import org.strawblue.core.spring.En13906Growth;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.EndsFree;
import org.strawblue.core.spring.EndsHeld;
import org.strawblue.core.spring.Goehner;
import org.strawblue.core.spring.Moduli;
import org.strawblue.core.spring.PitchCorrectedRate;
import org.strawblue.core.spring.PowerStrength;
import org.strawblue.core.spring.RateLaw;
import org.strawblue.core.spring.Seating;
import org.strawblue.core.spring.ShearStress;
import org.strawblue.core.spring.SpringMaterial;
import org.strawblue.core.spring.Strength;
import org.strawblue.core.spring.StrengthTable;
import org.strawblue.core.spring.StressFactor;
import org.strawblue.core.spring.Surge;
import org.strawblue.core.spring.Wahl;
import org.strawblue.core.spring.Zimmerli;

/** Helical springs. {@code wire}, {@code mean} or {@code outside}, {@code coils} and {@code ends} mean what they say. */
final class SpringOperations {

    private SpringOperations() {}

    static Map<String, Operation> all() {
        return Map.ofEntries(
                Map.entry("spring-index", in -> Result.number(mean(in) / wire(in))),
                Map.entry("spring-rate", SpringOperations::rate),
                Map.entry("spring-coils-for-rate", SpringOperations::coilsForRate),
                Map.entry("spring-stress-factor", in -> Result.number(factor(in).at(in.number("index")))),
                Map.entry("spring-stress", in -> stress(in, f -> factor(in).stress(f, mean(in), wire(in)))),
                Map.entry(
                        "spring-strength",
                        in -> strength(StrengthTable.of(in.text("table")).at(wire(in)))),
                Map.entry(
                        "spring-strength-by-formula",
                        in -> strength(
                                new PowerStrength(SpringMaterial.Key.valueOf(in.text("material"))).at(wire(in)))),
                Map.entry("spring-active-coils", in -> Result.number(coil(in).active())),
                Map.entry("spring-solid-length", in -> length(coil(in).solid())),
                Map.entry("spring-pitch", in -> length(coil(in).pitch())),
                Map.entry("spring-force-at-solid", SpringOperations::forceAtSolid),
                Map.entry("spring-free-length-for-force-at-solid", SpringOperations::freeForSolid),
                Map.entry("spring-longest-stable", SpringOperations::longestStable),
                Map.entry("spring-growth", SpringOperations::growth),
                Map.entry("spring-surge", SpringOperations::surge),
                Map.entry(
                        "spring-endurance",
                        in -> new Result.Number(new Quantity(
                                Dimension.STRESS, Zimmerli.endurance(in.si("strength", Dimension.STRESS))))),
                Map.entry("spring-straight-torsion", SpringOperations::straightTorsion),
                Map.entry("spring-stress-without-curvature", SpringOperations::straightTorsion),
                Map.entry("spring-rate-by-outside-diameter", SpringOperations::rateByOutside),
                Map.entry("spring-growth-as-if-held", in -> growth(in, new EndsHeld())),
                Map.entry(
                        "spring-factor-of-direct-shear", in -> Result.number(new DirectShear().at(in.number("index")))),
                Map.entry("spring-rate-by-total-coils", SpringOperations::rateByTotalCoils));
    }

    private static Result rate(Inputs in) {
        return stiffness(law(in).rate(moduli(in), wire(in), mean(in), active(in), pitch(in)));
    }

    private static Result coilsForRate(Inputs in) {
        double one = law(in).rate(moduli(in), wire(in), mean(in), 1, pitch(in));
        return Result.number(one / in.si("rate", Dimension.STIFFNESS));
    }

    private static Result straightTorsion(Inputs in) {
        return stress(in, f -> ShearStress.uncorrected(f, mean(in), wire(in)));
    }

    /** Control: the outside diameter taken for the mean. */
    private static Result rateByOutside(Inputs in) {
        return stiffness(law(in).rate(moduli(in), wire(in), in.length("outside"), active(in), pitch(in)));
    }

    /** Control: the closed coils counted as working. */
    private static Result rateByTotalCoils(Inputs in) {
        return stiffness(law(in).rate(moduli(in), wire(in), mean(in), in.number("coils"), pitch(in)));
    }

    private static Result forceAtSolid(Inputs in) {
        Coil coil = coil(in);
        double rate = law(in).rate(moduli(in), coil.wire(), coil.mean(), coil.active(), 0);
        return new Result.Number(Quantity.force(rate * (coil.free() - coil.solid())));
    }

    /** The free length of a spring that needs this force to be pressed solid. */
    private static Result freeForSolid(Inputs in) {
        Coil coil = coil(in);
        double rate = law(in).rate(moduli(in), coil.wire(), coil.mean(), coil.active(), 0);
        return length(coil.solid() + in.si("force", Dimension.FORCE) / rate);
    }

    private static Result longestStable(Inputs in) {
        return length(Buckling.alwaysStable(moduli(in), mean(in), Seating.valueOf(in.text("seating"))));
    }

    private static Result growth(Inputs in) {
        CoilGrowth law = switch (in.text("law")) {
            case "held" -> new EndsHeld();
            case "free" -> new EndsFree();
            case "en" -> new En13906Growth();
            default -> throw unknown(in, "law");
        };
        return growth(in, law);
    }

    private static Result growth(Inputs in, CoilGrowth law) {
        return length(law.growth(moduli(in), mean(in), wire(in), in.length("pitch"), wire(in)));
    }

    private static Result surge(Inputs in) {
        double rate = law(in).rate(moduli(in), wire(in), mean(in), active(in), 0);
        double mass = Surge.activeMass(in.number("density"), wire(in), mean(in), active(in));
        return new Result.Number(new Quantity(Dimension.FREQUENCY, Surge.frequency(rate, mass)));
    }

    private static Result stress(Inputs in, Function<Double, Double> law) {
        return new Result.Number(new Quantity(Dimension.STRESS, law.apply(in.si("force", Dimension.FORCE))));
    }

    private static Result strength(Optional<Strength> strength) {
        return strength.<Result>map(s -> new Result.Number(new Quantity(Dimension.STRESS, s.least())))
                .orElse(Result.word(Result.REFUSED));
    }

    private static StressFactor factor(Inputs in) {
        return switch (in.text("law")) {
            case "Wahl" -> new Wahl();
            case "Bergstraesser" -> new Bergstraesser();
            case "Goehner" -> new Goehner();
            case "direct shear" -> new DirectShear();
            default -> throw unknown(in, "law");
        };
    }

    private static RateLaw law(Inputs in) {
        return switch (in.optionalText("law").orElse("classical")) {
            case "classical" -> new ClassicalRate();
            case "pitch" -> new PitchCorrectedRate();
            default -> throw unknown(in, "law");
        };
    }

    private static IllegalArgumentException unknown(Inputs in, String name) {
        return new IllegalArgumentException("no such " + name + ": '" + in.text(name) + "'");
    }

    private static Coil coil(Inputs in) {
        double free = in.optionalSi("free", Dimension.LENGTH).orElse(1);
        return Coil.of(wire(in), mean(in) + wire(in), free, in.number("coils"), ends(in));
    }

    private static Ends ends(Inputs in) {
        EndType first = EndType.valueOf(in.text("ends"));
        return new Ends(first, in.optionalText("other").map(EndType::valueOf).orElse(first));
    }

    private static double active(Inputs in) {
        return in.has("active") ? in.number("active") : in.number("coils") - ends(in).inactive();
    }

    private static double wire(Inputs in) {
        return in.length("wire");
    }

    private static double mean(Inputs in) {
        return in.has("mean") ? in.length("mean") : in.length("outside") - wire(in);
    }

    private static double pitch(Inputs in) {
        return in.optionalSi("pitch", Dimension.LENGTH).orElse(0);
    }

    private static Moduli moduli(Inputs in) {
        double shear = in.si("G", Dimension.STRESS);
        return new Moduli(in.optionalSi("E", Dimension.STRESS).orElse(shear), shear);
    }

    private static Result length(double metres) {
        return new Result.Number(Quantity.length(metres));
    }

    private static Result stiffness(double rate) {
        return new Result.Number(new Quantity(Dimension.STIFFNESS, rate));
    }
}
