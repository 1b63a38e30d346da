package org.strawblue.core.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.HardeningHeat;
import org.strawblue.core.steel.QuenchFit;
import org.strawblue.core.steel.QuenchFits;
import org.strawblue.core.steel.Quenchant;

/** What may go wrong in hardening this part, and how to keep it from doing so. */
final class HardeningCautions {

    private HardeningCautions() {}

    static List<Finding> of(HardeningPlan plan) {
        List<Finding> all = new ArrayList<>();
        crack(plan).ifPresent(all::add);
        depth(plan).ifPresent(all::add);
        all.addAll(ShapeCautions.of(plan));
        all.addAll(heat(plan));
        haste(plan).ifPresent(all::add);
        retained(plan).ifPresent(all::add);
        magnet(plan).ifPresent(all::add);
        return all;
    }

    private static Optional<Finding> crack(HardeningPlan plan) {
        Grade grade = plan.grade();
        QuenchFit fit = QuenchFits.of(grade, plan.quench().family());
        String bath = plan.quench().name();
        return switch (fit) {
            case CRACKS ->
                Optional.of(new Finding.Caution(
                        Phrase.of(grade.name() + " may crack in " + bath + "."),
                        Phrase.of(
                                "It hardens deeper than so fierce a quench allows for; the skin is hard before the core shrinks."),
                        Phrase.of("Use " + HardeningStops.words(grade)
                                + " if you can; round every inside corner, and temper"
                                + " while the part is still hand-warm.")));
            case HARSH ->
                Optional.of(new Finding.Caution(
                        Phrase.of(grade.name() + " does not need " + bath + "."),
                        Phrase.of("It hardens in air; a fiercer quench only warps it, and may crack it."),
                        Phrase.of("Use " + HardeningStops.words(grade) + ".")));
            default -> Optional.empty();
        };
    }

    private static Optional<Finding> depth(HardeningPlan plan) {
        var quenched = plan.quenched();
        return switch (quenched.verdict()) {
            case THROUGH, SOFT -> Optional.empty();
            case LIKELY_THROUGH ->
                Optional.of(
                        new Finding.Caution(
                                Phrase.of("The centre probably hardens, but not surely."),
                                Phrase.of(
                                        "The chance is {}; heats of one steel differ, and so do baths.",
                                        Quantity.fraction(quenched.through())),
                                Phrase.of(
                                        "Move the part in the bath all the while; prove the core on a snapped test piece if it matters.")));
            case SHELL ->
                Optional.of(new Finding.Caution(
                        Phrase.of(
                                "It hardens as a shell, about {} deep, over a softer core.",
                                quenched.depth().band()),
                        Phrase.of(
                                "The section of {} is more than this quench hardens through; the core comes out near {}.",
                                Quantity.length(plan.shape().section()),
                                quenched.centre().quantity()),
                        Phrase.of(
                                "For most tools that is good: tough inside. Do not grind through the shell; if the core must be"
                                        + " hard, take a steel that hardens deeper.")));
            case UNSURE ->
                Optional.of(
                        new Finding.Caution(
                                Phrase.of("Even the surface may come out soft."),
                                Phrase.of(
                                        "This quench is slow for the steel at a section of {}: the chance of a hard skin is {}.",
                                        Quantity.length(plan.shape().section()),
                                        Quantity.fraction(quenched.skin())),
                                Phrase.of(
                                        "Use a faster quench, or make the section smaller; prove it with a file before you temper.")));
        };
    }

    private static List<Finding> heat(HardeningPlan plan) {
        List<Finding> all = new ArrayList<>();
        Estimate window = plan.austenitise();
        Estimate reach = plan.source().traits().reach();
        if (reach.value() < window.value()) {
            all.add(new Finding.Caution(
                    Phrase.of("The " + plan.source().name() + " gets only just to the {} wanted.", window.quantity()),
                    Phrase.of("Its usual reach is {}.", reach.band()),
                    Phrase.of("Try it on a scrap of the same size first.")));
        }
        if (plan.source().traits().unevenness() > window.band().width()) {
            all.add(new Finding.Caution(
                    Phrase.of(
                            "The window of {} is narrower than the "
                                    + plan.source().name() + " is even.",
                            window.band()),
                    Phrase.of(
                            "Hot and cold places of the part may lie {} apart.",
                            Quantity.temperatureDifference(
                                    plan.source().traits().unevenness())),
                    Phrase.of(
                            "Keep the part turning and the flame moving; let the heat soak in rather than drive it; thin"
                                    + " edges last.")));
        }
        return all;
    }

    private static Optional<Finding> haste(HardeningPlan plan) {
        double quick = SteelProperties.HEAT.si("quick", Dimension.TIME);
        return plan.toBath()
                .filter(t -> t.low() < quick)
                .map(
                        t -> new Finding.Caution(
                                Phrase.of("Only {} between fire and bath.", t.band()),
                                Phrase.of(
                                        "A section of {} loses its heat that fast in air.",
                                        Quantity.length(plan.shape().section())),
                                Phrase.of(
                                        "Set the bath right beside the fire and practise the move cold; or quench straight out of the flame.")));
    }

    private static Optional<Finding> retained(HardeningPlan plan) {
        Estimate share = plan.quenched().retained();
        return HardeningHeat.muchRetained(share)
                ? Optional.of(new Finding.Note(
                        Phrase.of("About {} of the austenite does not turn in the quench.", share.quantity()),
                        Phrase.of(
                                "What is left turns later, and the part grows by it; it also costs a point or so of hardness."),
                        Phrase.of(
                                "Do not overheat or soak too long. For a gauge, temper twice and let it age before the last"
                                        + " lapping.")))
                : Optional.empty();
    }

    private static Optional<Finding> magnet(HardeningPlan plan) {
        if (HardeningHeat.magnetGuides(plan.magnet(), plan.austenitise())
                || plan.quench().family() == Quenchant.Family.AIR && plan.source() instanceof HeatSource.Kiln) {
            return Optional.empty();
        }
        return Optional.of(new Finding.Note(
                Phrase.of(
                        "The magnet lets go near {}, well short of the {} wanted.",
                        plan.magnet().quantity(),
                        plan.austenitise().quantity()),
                Phrase.of("Loss of magnetism shows the change begun, not the carbides dissolved."),
                Phrase.of("Go on by the thermocouple or the colour of the glow.")));
    }
}
