package org.strawblue.core.evidence.diagnosis;

import java.util.Optional;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.AsQuenchedHardness;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.HardeningHeat;
import org.strawblue.core.steel.QuenchFits;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenched;
import org.strawblue.core.steel.Quenching;

/** Whether the steel can harden, and what this bath does to it. */
final class QuenchChecks {

    private QuenchChecks() {}

    static Optional<Check> carbon(Known known) {
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
                    never ? certain : 1 - certain, because, Check.assumed("whether it is the steel it is taken for"));
        });
    }

    /** Of a part that was hot enough: whether it was is a cause of its own. */
    static Optional<Check> quench(Known known) {
        if (known.grade().isEmpty() || known.quench().isEmpty()) {
            return Optional.empty();
        }
        Grade grade = known.grade().get();
        Quenchant bath = known.quench().get();
        Optional<Check> byLaw = known.shape()
                .flatMap(shape -> known.window()
                        .flatMap(w -> Quenching.of(grade, shape, bath, w.value())
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
        boolean gas = gas(bath);
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

    static Optional<Check> fierce(Known known) {
        if (known.grade().isEmpty() || known.quench().isEmpty()) {
            return Optional.empty();
        }
        Grade grade = known.grade().get();
        Quenchant bath = known.quench().get();
        boolean gas = gas(bath);
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

    private static boolean gas(Quenchant bath) {
        return bath.family() == Quenchant.Family.AIR || bath.family() == Quenchant.Family.PLATES;
    }
}
