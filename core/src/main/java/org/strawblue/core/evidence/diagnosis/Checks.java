package org.strawblue.core.evidence.diagnosis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.fit.Decarburisation;
import org.strawblue.core.heat.HeatThrough;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.history.Trace;
import org.strawblue.core.oxide.FilmColours;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.steel.AsQuenchedHardness;
import org.strawblue.core.steel.CriticalPoints;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.HardeningHeat;
import org.strawblue.core.steel.QuenchFits;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenched;
import org.strawblue.core.steel.Quenching;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;

/**
 * Causes of which the laws of the other rooms tell the chance. A check that lacks something of the job, or whose law does not hold
 * there, says nothing.
 *
 * <p>A check raises its cause by (chance that it is so) / (how often it is so in jobs as they come), within limits.
 */
final class Checks {

    private static final Map<String, Function<Known, Optional<Check>>> ALL = Map.ofEntries(
            Map.entry("heat", Checks::heat),
            Map.entry("soak", Checks::soak),
            Map.entry("quench", Checks::quench),
            Map.entry("carbon", Checks::carbon),
            Map.entry("skin", Checks::skin),
            Map.entry("overheated", Checks::overheated),
            Map.entry("fierce", Checks::fierce),
            Map.entry("temper-hard", k -> temper(k, true)),
            Map.entry("temper-soft", k -> temper(k, false)),
            Map.entry("time", Checks::time),
            Map.entry("chromium", Checks::chromium),
            Map.entry("slender", Checks::slender));

    private static final Map<String, Double> USUAL = new HashMap<>();

    static {
        org.strawblue.core.table.Table.of(Checks.class, "checks.csv")
                .rows()
                .forEach(r -> USUAL.put(r.text("key"), r.number("usual")));
    }

    private Checks() {}

    static Optional<Check> of(String key, Known known) {
        Function<Known, Optional<Check>> check = ALL.get(key);
        return check == null ? Optional.empty() : check.apply(known);
    }

    /** By how much a check raises its cause [1]. */
    static double factor(String key, Check check) {
        double most = Figures.number("check-most");
        double usual =
                Optional.ofNullable(USUAL.get(key)).orElseThrow(() -> new IllegalStateException("no check " + key));
        return Math.max(1 / most, Math.min(most, check.chance() / usual));
    }

    private static Basis reckoned(String what, Standing standing) {
        return new Basis(what, "strawblue", standing);
    }

    private static Basis assumed(String what) {
        return reckoned(what, Standing.ASSUMED);
    }

    private static Optional<Estimate> window(Known known) {
        return known.grade().flatMap(g -> CriticalPoints.of(g).value().map(p -> HardeningHeat.window(g, p)));
    }

    /** How far the true hardening heat may be from the one told [K]. */
    private static double heatSpread(Known known) {
        double eye = Figures.ALL.si("heat-spread", Dimension.TEMPERATURE_DIFFERENCE);
        return known.source().map(s -> s.traits().offset()).orElse(eye);
    }

    private static Optional<Check> heat(Known known) {
        if (known.hardenedFrom().isEmpty()) {
            return Optional.empty();
        }
        double told = known.hardenedFrom().getAsDouble();
        return window(known)
                .flatMap(window -> known.grade()
                        .flatMap(g -> CriticalPoints.of(g).value())
                        .map(points -> {
                            // between the lower critical point and the window it hardens in part
                            double needed = (points.ac1().value() + window.low()) / 2;
                            return new Check(
                                    Normal.below((needed - told) / heatSpread(known)),
                                    Phrase.of(
                                            "hardened from {}; it wants {}", Quantity.temperature(told), window.band()),
                                    assumed("error of the hardening heat"));
                        }));
    }

    private static Optional<Check> overheated(Known known) {
        if (known.hardenedFrom().isEmpty()) {
            return Optional.empty();
        }
        double told = known.hardenedFrom().getAsDouble();
        double past = Figures.ALL.si("past-window", Dimension.TEMPERATURE_DIFFERENCE);
        return window(known)
                .map(window -> new Check(
                        Normal.below((told - window.high() - past) / heatSpread(known)),
                        Phrase.of(
                                "hardened from {}; it wants no more than {}",
                                Quantity.temperature(told),
                                Quantity.temperature(window.high())),
                        assumed("error of the hardening heat")));
    }

    private static Optional<Check> soak(Known known) {
        if (known.inTheHeat().isEmpty()
                || known.shape().isEmpty()
                || known.source().isEmpty()) {
            return Optional.empty();
        }
        Optional<Estimate> window = window(known);
        if (window.isEmpty()) {
            return Optional.empty();
        }
        double target = known.hardenedFrom().orElse(window.get().value());
        double told = known.inTheHeat().getAsDouble();
        double soak = known.grade().map(g -> HardeningHeat.soak(g).low()).orElse(0.0);
        return HeatThrough.time(
                        known.shape().get(),
                        known.source().get(),
                        SteelProperties.room(),
                        target,
                        HeatThrough.Surface.SCALING)
                .value()
                .map(through -> new Check(
                        1 - through.chanceBelow(told - soak),
                        Phrase.of(
                                "{} in the heat; to heat through it takes {}, then a soak of {}",
                                Quantity.time(told),
                                through.band(),
                                Quantity.time(soak)),
                        assumed("time to heat through")));
    }

    private static Optional<Check> quench(Known known) {
        if (known.grade().isEmpty() || known.quench().isEmpty()) {
            return Optional.empty();
        }
        Grade grade = known.grade().get();
        Quenchant bath = known.quench().get();
        Optional<Check> byLaw = known.shape()
                .flatMap(shape -> window(known)
                        .flatMap(w -> Quenching.of(
                                        grade, shape, bath, known.hardenedFrom().orElse(w.value()))
                                .value()
                                .map(q -> slow(q, shape, bath))));
        return byLaw.or(() -> slack(grade, bath));
    }

    private static Check slow(Quenched quenched, PartShape shape, Quenchant bath) {
        return new Check(
                1 - quenched.skin(),
                Phrase.of(
                        "a section of {} in " + bath.name() + " has a hard surface with a chance of {}",
                        Quantity.length(shape.section()),
                        Quantity.fraction(quenched.skin())),
                quenched.surface().bases().first());
    }

    private static Optional<Check> slack(Grade grade, Quenchant bath) {
        boolean gas = bath.family() == Quenchant.Family.AIR || bath.family() == Quenchant.Family.PLATES;
        String figure = switch (QuenchFits.of(grade, bath.family())) {
            case NEVER -> gas ? "fit-never" : "fit-mild";
            case SLACK, THIN -> "fit-slack";
            default -> "fit-mild";
        };
        return Optional.of(new Check(
                Figures.number(figure),
                Phrase.of(grade.of("quench") + " against " + bath.name()),
                Figures.ALL.basis("how a steel takes a quench", figure)));
    }

    private static Optional<Check> fierce(Known known) {
        if (known.grade().isEmpty() || known.quench().isEmpty()) {
            return Optional.empty();
        }
        Grade grade = known.grade().get();
        Quenchant bath = known.quench().get();
        boolean gas = bath.family() == Quenchant.Family.AIR || bath.family() == Quenchant.Family.PLATES;
        String figure = switch (QuenchFits.of(grade, bath.family())) {
            case NEVER -> gas ? "fit-mild" : "fit-never";
            case CRACKS -> "fit-cracks";
            case HARSH -> "fit-harsh";
            default -> "fit-mild";
        };
        String word = switch (figure) {
            case "fit-never", "fit-cracks" -> " cracks in ";
            case "fit-harsh" -> " can do with less than ";
            default -> " is made for, or stands, ";
        };
        return Optional.of(new Check(
                Figures.number(figure),
                Phrase.of(grade.name() + word + bath.name()),
                Figures.ALL.basis("how a steel takes a quench", figure)));
    }

    private static Optional<Check> carbon(Known known) {
        return known.grade().map(grade -> {
            Answer<Estimate> full = AsQuenchedHardness.of(grade);
            boolean caseOnly = grade.catalogued() && grade.madeFor().isEmpty();
            boolean never = caseOnly
                    || full.value()
                            .filter(f -> f.high() < HardeningHeat.toolHardness())
                            .isPresent();
            double certain = Figures.number("certain");
            Phrase because = full.value()
                    .map(f -> Phrase.of(grade.name() + " quenched fully reaches {}", f.band()))
                    .orElse(Phrase.of(grade.name() + (never ? " is no hardening steel" : " hardens")));
            return new Check(
                    never ? certain : 1 - certain, because, assumed("whether it is the steel it is taken for"));
        });
    }

    private static Optional<Check> skin(Known known) {
        if (known.hardenedFrom().isEmpty() || known.inTheHeat().isEmpty()) {
            return Optional.empty();
        }
        double least = Figures.ALL.si("soft-skin", Dimension.LENGTH);
        Estimate skin = Decarburisation.skin(
                known.hardenedFrom().getAsDouble(), known.inTheHeat().getAsDouble());
        return Optional.of(new Check(
                1 - skin.chanceBelow(least),
                Phrase.of("a soft skin of {} after so long in air at that heat", skin.band()),
                skin.bases().first()));
    }

    private static Optional<Check> temper(Known known, boolean hard) {
        if (known.grade().isEmpty()
                || known.temper().isEmpty()
                || known.wanted().isEmpty()) {
            return Optional.empty();
        }
        Grade grade = known.grade().get();
        Temper temper = known.temper().get();
        Steel steel = grade.catalogued()
                ? Steel.ofGrade(grade.name()).with(grade.composition())
                : Steel.of(grade.composition());
        var wanted = known.wanted().get();
        return Tempering.hardness(steel, List.of(temper))
                .value()
                .map(h -> new Check(
                        hard ? 1 - h.chanceBelow(wanted.high()) : h.chanceBelow(wanted.low()),
                        Phrase.of("that temper gives {}; wanted {}", h.band(), wanted),
                        h.bases().first()));
    }

    /** Chance that the chart's time moves the colour further than colours scatter. */
    private static Optional<Check> time(Known known) {
        if (known.temper().isEmpty()) {
            return Optional.empty();
        }
        Temper temper = known.temper().get();
        FilmColours colours = FilmColours.standard();
        double chart = colours.chartSeconds();
        return colours.after(Trace.hold(temper.kelvin(), temper.seconds()), org.strawblue.core.colour.Light.DAYLIGHT, 0)
                .then(r -> colours.temperatureFor(r.thickness().value(), chart, 0))
                .value()
                .map(t -> {
                    double sd = t.band().width() / 2 / Normal.HALF_OF_80;
                    double off = Math.abs(t.value() - temper.kelvin()) / sd;
                    return new Check(
                            2 * Normal.below(off) - 1,
                            Phrase.of(
                                    "after {} the usual chart reads that colour as {}, and it was {}",
                                    Quantity.time(temper.seconds()),
                                    t.quantity(),
                                    Quantity.temperature(temper.kelvin())),
                            t.bases().first());
                });
    }

    private static Optional<Check> chromium(Known known) {
        return known.grade().map(grade -> {
            double percent = grade.composition().of(Element.CR);
            String much = percent >= Figures.number("chromium-much")
                    ? "chromium-much"
                    : percent >= Figures.number("chromium-some") ? "chromium-some" : "chromium-none";
            return new Check(
                    Figures.number(much + "-chance"),
                    Phrase.of(grade.name() + " holds {} % chromium", Quantity.number(percent)),
                    Figures.ALL.basis("colours of chromium steels", much + "-chance"));
        });
    }

    private static Optional<Check> slender(Known known) {
        return known.shape().map(shape -> {
            boolean slender = shape instanceof PartShape.Flat f
                    ? f.width() / f.thickness() > HardeningHeat.wideThin()
                            || f.length() / f.thickness() > HardeningHeat.longThin()
                    : length(shape) / shape.section() > HardeningHeat.longThin();
            return new Check(
                    Figures.number(slender ? "slender-chance" : "stout-chance"),
                    Phrase.of(
                            "a section of {}" + (slender ? ", long or wide for that" : ""),
                            Quantity.length(shape.section())),
                    Figures.ALL.basis("slender parts bend", "slender-chance"));
        });
    }

    private static double length(PartShape shape) {
        if (shape instanceof PartShape.RoundBar bar) {
            return bar.length();
        }
        return shape instanceof PartShape.SquareBar bar ? bar.length() : shape.section();
    }
}
