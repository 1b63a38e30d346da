package org.strawblue.core.heat;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.HardeningHeat;
import org.strawblue.core.steel.QuenchFit;
import org.strawblue.core.steel.QuenchFits;
import org.strawblue.core.steel.Quenchant;

/** How the shape of a part may warp or crack it. */
final class ShapeCautions {

    private ShapeCautions() {}

    static List<Finding> of(HardeningPlan plan) {
        List<Finding> all = new ArrayList<>();
        PartShape shape = plan.shape();
        boolean liquid = plan.quench().family().compareTo(Quenchant.Family.OIL) <= 0;
        if (length(shape) > HardeningHeat.longThin() * across(shape)) {
            all.add(bends(liquid));
        }
        if (shape instanceof PartShape.Flat flat && flat.width() > HardeningHeat.wideThin() * flat.thickness()) {
            all.add(warps(liquid));
        }
        if (shape instanceof PartShape.Tube && liquid) {
            all.add(bore());
        }
        if (plan.quench().family().compareTo(Quenchant.Family.WATER) <= 0
                || QuenchFits.of(plan.grade(), plan.quench().family()) == QuenchFit.CRACKS) {
            all.add(corners());
        }
        plan.source().evenLength().filter(even -> even < length(shape)).ifPresent(even -> all.add(longer(plan, even)));
        return all;
    }

    private static Finding bends(boolean liquid) {
        return new Finding.Caution(
                Phrase.of("Long and thin: it may bend."),
                Phrase.of("Its own weight bends it at heat, and one side that cools first pulls it crooked."),
                Phrase.of(
                        liquid
                                ? "Hang or stand it upright at heat; plunge it end first, straight down, and move it up and"
                                        + " down, not sideways."
                                : "Hang or stand it upright at heat and while it cools; keep draughts off one side."));
    }

    private static Finding warps(boolean liquid) {
        return new Finding.Caution(
                Phrase.of("Wide and thin: it may warp."),
                Phrase.of("The faces do not cool at the same rate."),
                Phrase.of(
                        liquid
                                ? "Plunge it edge first; clamp it flat between plates as soon as it has stopped fuming, and"
                                        + " temper it clamped."
                                : "Clamp it between flat plates while it cools."));
    }

    private static Finding bore() {
        return new Finding.Caution(
                Phrase.of("The bore cools later than the outside, and may come out oval or small."),
                Phrase.of("Vapour stays in it, the longer the narrower it is."),
                Phrase.of(
                        "Plunge it with the bore upright and open at both ends, and pump it up and down; leave stock to lap."));
    }

    private static Finding corners() {
        return new Finding.Caution(
                Phrase.of("Cracks start at sharp inside corners, at steps of section and at holes near an edge."),
                Phrase.of("Thin and thick cool apart, and the pull between them gathers there."),
                Phrase.of(
                        "Round every inside corner; keep holes more than their own diameter from an edge, or plug them with"
                                + " clay or wet wool; move the part gently in the bath, and take it out hand-warm, not cold."));
    }

    private static Finding longer(HardeningPlan plan, double even) {
        return new Finding.Caution(
                Phrase.of(
                        "The " + plan.source().name() + " heats about {} evenly; the part is {} long.",
                        Quantity.length(even),
                        Quantity.length(length(plan.shape()))),
                Phrase.of("What is not at heat does not harden."),
                Phrase.of(
                        "Harden only the end that works, and leave the rest soft on purpose; or use a kiln or a forge."));
    }

    private static double length(PartShape shape) {
        if (shape instanceof PartShape.RoundBar bar) {
            return bar.length();
        }
        if (shape instanceof PartShape.SquareBar bar) {
            return bar.length();
        }
        if (shape instanceof PartShape.Tube tube) {
            return tube.length();
        }
        if (shape instanceof PartShape.SteppedPin pin) {
            return pin.length();
        }
        PartShape.Flat flat = (PartShape.Flat) shape;
        return Math.max(flat.width(), flat.length());
    }

    /** What resists bending: the diameter of a tube, not its wall. */
    private static double across(PartShape shape) {
        return shape instanceof PartShape.Tube tube ? tube.outside() : shape.section();
    }
}
