package org.strawblue.app.proof;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.FatigueLaw;
import org.strawblue.core.spring.GerberFatigue;
import org.strawblue.core.spring.GoodmanFatigue;
import org.strawblue.core.spring.MeasurementErrors;
import org.strawblue.core.spring.Moduli;
import org.strawblue.core.spring.ModulusFromRate;
import org.strawblue.core.spring.SoderbergFatigue;
import org.strawblue.core.spring.SpringMaterial;
import org.strawblue.core.spring.family.ClickSpring;
import org.strawblue.core.spring.family.Curvature;
import org.strawblue.core.spring.family.DiscSpring;
import org.strawblue.core.spring.family.DiscStack;
import org.strawblue.core.spring.family.ExtensionSpring;
import org.strawblue.core.spring.family.HelicalSpring;
import org.strawblue.core.spring.family.Nest;
import org.strawblue.core.spring.family.SeriesStack;
import org.strawblue.core.spring.family.TorsionSpring;
import org.strawblue.core.spring.identify.ErrorBudget;
import org.strawblue.core.spring.tolerance.CoilDiameterClass;
import org.strawblue.core.spring.tolerance.FreeLengthTolerance;
import org.strawblue.core.spring.tolerance.LoadTolerance;
import org.strawblue.core.spring.wind.Springback;

/** Nested and stacked springs, extension, torsion, disc and flat springs; fatigue; tolerances. */
final class SpringFamilyOperations {

    private SpringFamilyOperations() {}

    static Map<String, Operation> all() {
        Map<String, Operation> all = new LinkedHashMap<>();
        nests(all);
        extension(all);
        torsion(all);
        discs(all);
        fatigue(all);
        tolerances(all);
        making(all);
        return all;
    }

    private static void nests(Map<String, Operation> all) {
        all.put("nest-deflection", in -> length(nest(in).deflection(force(in))));
        all.put("nest-outer-force", in -> force(n -> n.outer().force(n.outerDeflection(n.deflection(force(in)))), in));
        all.put("nest-inner-force", in -> force(n -> n.inner().force(n.innerDeflection(n.deflection(force(in)))), in));
        all.put("stack-rate", in -> stiffness(stack(in).rate()));
        all.put("stack-force", in -> newtons(stack(in).force(in.length("deflection"))));
        all.put("nest-rate-as-if-in-series", in -> {
            Nest nest = nest(in);
            return stiffness(1 / (1 / nest.outer().rate() + 1 / nest.inner().rate()));
        });
    }

    private static Result force(ToDoubleFunction<Nest> of, Inputs in) {
        return newtons(of.applyAsDouble(nest(in)));
    }

    private static Nest nest(Inputs in) {
        double gap = in.optionalSi("gap", Dimension.LENGTH).orElse(0);
        return new Nest(helical(in, ""), helical(in, "inner "), gap);
    }

    private static SeriesStack stack(Inputs in) {
        return new SeriesStack(java.util.List.of(helical(in, ""), helical(in, "inner ")));
    }

    /** With working coils given, the classical rate: pitch as good as none. */
    private static HelicalSpring helical(Inputs in, String which) {
        double wire = in.length(which + "wire");
        double coils = in.number(which + "active");
        double shear = in.si("G", Dimension.STRESS);
        double free = in.optionalSi(which + "free", Dimension.LENGTH).orElse(10 * coils * wire);
        Ends ends = Ends.both(EndType.CLOSED_GROUND);
        double stiffness = 1;
        Coil coil = Coil.of(wire, in.length(which + "mean") + wire, free, coils + ends.inactive(), ends);
        // the examples use the plain formula: what pitch adds is taken out again
        double plain = shear * Math.pow(wire, 4) / (8 * Math.pow(coil.mean(), 3) * coils);
        Moduli moduli = new Moduli(shear, shear);
        stiffness = plain / coil.rate(moduli);
        return new HelicalSpring(new Coil(wire, coil.outside(), free, coil.total(), ends, stiffness), moduli);
    }

    private static void extension(Map<String, Operation> all) {
        all.put("extension-active-coils", in -> Result.number(extension(in).active()));
        all.put("extension-rate", in -> stiffness(extension(in).rate()));
        all.put("extension-free-length", in -> length(extension(in).freeLength()));
        all.put(
                "extension-deflection",
                in -> length((force(in) - extension(in).initialTension())
                        / extension(in).rate()));
        all.put("extension-body-stress", in -> stress(extension(in).bodyStress(force(in))));
        all.put("extension-hook-bending", in -> stress(extension(in).hookBending(force(in))));
        all.put("extension-hook-torsion", in -> stress(extension(in).hookTorsion(force(in))));
        all.put(
                "extension-initial-tension-stress",
                in -> stress(
                        ExtensionSpring.initialTensionStress(in.number("index")).middle()));
        all.put("extension-active-without-hooks", in -> Result.number(in.number("coils")));
    }

    private static ExtensionSpring extension(Inputs in) {
        double wire = in.length("wire");
        double mean = in.has("mean") ? in.length("mean") : in.length("outside") - wire;
        return new ExtensionSpring(
                wire,
                mean,
                in.number("coils"),
                in.optionalSi("tension", Dimension.FORCE).orElse(0),
                in.optionalSi("hook", Dimension.LENGTH).orElse(mean / 2),
                in.optionalSi("side", Dimension.LENGTH).orElse(mean / 2),
                moduli(in));
    }

    private static void torsion(Map<String, Operation> all) {
        all.put("torsion-factor", in -> Result.number(Curvature.inside(in.number("index"))));
        all.put("torsion-active-coils", in -> Result.number(torsion(in).active()));
        all.put("torsion-turns", in -> Result.number(torsion(in).turns(moment(in))));
        all.put("torsion-body-turns", in -> Result.number(torsion(in).bodyTurns(moment(in))));
        all.put("torsion-stress", in -> stress(torsion(in).stress(moment(in))));
        all.put(
                "torsion-moment",
                in -> new Result.Number(
                        new Quantity(Dimension.MOMENT, torsion(in).momentAt(in.si("stress", Dimension.STRESS)))));
        all.put("torsion-wound-mean", in -> length(torsion(in).woundMean(in.number("turns"))));
        all.put("torsion-clearance", in -> length(torsion(in).clearance(in.length("pin"), in.number("turns"))));
        all.put("torsion-body-length", in -> length(torsion(in).bodyLength(in.number("turns"))));
        all.put(
                "torsion-frictionless-angle",
                in -> new Result.Number(
                        new Quantity(Dimension.ANGLE, torsion(in).frictionlessAngle(moment(in)))));
        all.put("torsion-clearance-as-if-free", in -> length(torsion(in).clearance(in.length("pin"), 0)));
    }

    private static TorsionSpring torsion(Inputs in) {
        double wire = in.length("wire");
        double mean = in.has("mean") ? in.length("mean") : in.length("outside") - wire;
        return new TorsionSpring(
                wire,
                mean,
                in.number("coils"),
                in.optionalSi("legs", Dimension.LENGTH).orElse(0),
                in.optionalSi("E", Dimension.STRESS).orElse(1));
    }

    private static void discs(Map<String, Operation> all) {
        all.put("disc-force", in -> newtons(disc(in).force(in.length("deflection"))));
        all.put("disc-stress-middle", in -> stress(disc(in).stress(in.length("deflection"))));
        all.put("disc-stress-one", in -> stress(disc(in).stressOne(in.length("deflection"))));
        all.put("disc-stress-two", in -> stress(disc(in).stressTwo(in.length("deflection"))));
        all.put("disc-stress-three", in -> stress(disc(in).stressThree(in.length("deflection"))));
        all.put(
                "disc-stack-force",
                in -> newtons(new DiscStack(disc(in), (int) in.number("parallel"), (int) in.number("series"))
                        .force(in.length("deflection"))));
        all.put("disc-force-in-a-straight-line", in -> {
            double small = in.length("deflection") / 1e6;
            return newtons(disc(in).force(small) * 1e6);
        });
        all.put("click-force", in -> newtons(click(in).force(in.length("deflection"))));
        all.put("click-stress", in -> stress(click(in).stress(in.length("deflection"))));
    }

    private static DiscSpring disc(Inputs in) {
        return new DiscSpring(
                in.length("outside"),
                in.length("inside"),
                in.length("thickness"),
                in.length("cone"),
                in.si("E", Dimension.STRESS),
                in.has("poisson") ? in.number("poisson") : DiscSpring.steelPoisson());
    }

    private static ClickSpring click(Inputs in) {
        return new ClickSpring(
                in.length("length"), in.length("width"), in.length("thickness"), in.si("E", Dimension.STRESS));
    }

    private static void fatigue(Map<String, Operation> all) {
        all.put(
                "fatigue-safety",
                in -> Result.number(law(in).safety(
                                in.si("amplitude", Dimension.STRESS),
                                in.si("mean stress", Dimension.STRESS),
                                in.si("strength", Dimension.STRESS))));
        all.put(
                "spring-endurance-by-parabola",
                in -> stress(
                        org.strawblue.core.spring.Zimmerli.enduranceByParabola(in.si("strength", Dimension.STRESS))));
    }

    private static FatigueLaw law(Inputs in) {
        return switch (in.text("law")) {
            case "Goodman" -> new GoodmanFatigue();
            case "Gerber" -> new GerberFatigue();
            case "Soderberg" -> new SoderbergFatigue(in.number("pulsating"), in.number("yield"));
            default -> throw new IllegalArgumentException("no such law: '" + in.text("law") + "'");
        };
    }

    private static void tolerances(Map<String, Operation> all) {
        all.put(
                "tolerance-coil-diameter",
                in -> orRefused(
                        CoilDiameterClass.values()[(int) in.number("class") - 1].deviation(
                                in.length("mean"), in.length("wire")),
                        Dimension.LENGTH));
        all.put(
                "tolerance-free-length-share",
                in -> Result.number(FreeLengthTolerance.share(in.number("coils per inch"), in.number("index"))));
        all.put(
                "tolerance-load-share",
                in -> orRefused(
                        LoadTolerance.share(in.length("length tolerance"), in.length("deflection")), Dimension.NUMBER));
    }

    /** What an unknown spring's rate is worth, and how wire springs back. */
    private static void making(Map<String, Operation> all) {
        all.put("spring-rate-doubt", in -> Result.number(100 * budget(in).total()));
        all.put("spring-rate-doubt-wire", in -> Result.number(100 * budget(in).wire()));
        all.put(
                "spring-rate-doubt-outside",
                in -> Result.number(100 * budget(in).outside()));
        all.put("spring-rate-doubt-coils", in -> Result.number(100 * budget(in).coils()));
        all.put("spring-rate-doubt-with-mean-exact", in -> {
            ErrorBudget b = budget(in);
            double wire = 4 * in.length("wire error") / in.length("wire");
            return Result.number(100 * Math.hypot(Math.hypot(wire, b.coils()), b.modulus()));
        });
        all.put(
                "spring-modulus-implied",
                in -> stress(ModulusFromRate.of(
                        in.si("rate", Dimension.STIFFNESS),
                        in.length("wire"),
                        in.length("mean"),
                        in.number("active"))));
        all.put("winding-arbor", in -> length(arbor(in)));
        all.put("winding-arbor-as-if-it-stayed", in -> length(in.length("outside") - 2 * in.length("wire")));
    }

    private static ErrorBudget budget(Inputs in) {
        MeasurementErrors errors =
                new MeasurementErrors(in.length("wire error"), in.length("outside error"), 0, in.number("coil error"));
        return ErrorBudget.of(
                in.length("wire"), in.length("outside"), in.number("active"), errors, in.number("modulus error"));
    }

    /** Of music wire, by the yield that the table of arbors was fitted with. */
    private static double arbor(Inputs in) {
        SpringMaterial music = SpringMaterial.of(SpringMaterial.Key.MUSIC);
        double wire = in.length("wire");
        double strength = music.allowable(wire).orElseThrow().strength();
        return Springback.arbor(
                in.length("outside") - wire,
                wire,
                in.number("yield") * strength,
                music.stiffness(wire).moduli().tension());
    }

    private static Result orRefused(OptionalDouble value, Dimension dimension) {
        return value.isPresent()
                ? new Result.Number(new Quantity(dimension, value.getAsDouble()))
                : Result.word(Result.REFUSED);
    }

    private static Moduli moduli(Inputs in) {
        double shear = in.si("G", Dimension.STRESS);
        return new Moduli(in.optionalSi("E", Dimension.STRESS).orElse(shear), shear);
    }

    private static double force(Inputs in) {
        return in.si("force", Dimension.FORCE);
    }

    private static double moment(Inputs in) {
        return in.si("moment", Dimension.MOMENT);
    }

    private static Result length(double metres) {
        return new Result.Number(Quantity.length(metres));
    }

    private static Result newtons(double force) {
        return new Result.Number(Quantity.force(force));
    }

    private static Result stiffness(double rate) {
        return new Result.Number(new Quantity(Dimension.STIFFNESS, rate));
    }

    private static Result stress(double pascal) {
        return new Result.Number(new Quantity(Dimension.STRESS, pascal));
    }
}
