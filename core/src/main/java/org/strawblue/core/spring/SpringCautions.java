package org.strawblue.core.spring;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** What to mind about a spring that may well work. */
final class SpringCautions {

    private static final double INDEX_LOW = Figures.PRACTICE.number("index_low");
    private static final double INDEX_HIGH = Figures.PRACTICE.number("index_high");

    private SpringCautions() {}

    static List<Finding> of(CompressionSpring spring, Pocket pocket, Duty duty) {
        List<Finding> all = new ArrayList<>();
        setAtSolid(all, spring, duty);
        bowsInGuide(all, spring, duty);
        few(all, spring);
        crooked(all, spring);
        unusualIndex(all, spring);
        stainless(all, spring);
        if (spring.material().key() == SpringMaterial.Key.UNKNOWN) {
            all.add(note(
                    Phrase.of("What wire it is, nobody knows."),
                    Phrase.of("Its stiffness is therefore in doubt, and the weakest likely wire is assumed for set."),
                    Phrase.of("Hang a known weight on it and measure how far it gives.")));
        }
        if (pocket.seating().isEmpty() && !duty.guided(spring.nominal())) {
            all.add(note(
                    Phrase.of("Both seats are taken as flat and parallel."),
                    Phrase.of("How the ends are held decides when a slim spring bows out."),
                    Phrase.of("Say in the job how the spring is seated.")));
        }
        return all;
    }

    private static void setAtSolid(List<Finding> all, CompressionSpring spring, Duty duty) {
        Estimate stress = spring.stressAtSolid();
        if (stress.value() > duty.allowable()) {
            all.add(new Finding.Caution(
                    Phrase.of(
                            "Takes a set if pressed solid: {}.",
                            spring.solidLength().quantity()),
                    Phrase.of(
                            "With its coils touching the wire bears {}, and {} is what it stands.",
                            stress.quantity(),
                            new Quantity(Dimension.STRESS, duty.allowable())),
                    Phrase.of("Let a shoulder stop the travel, and do not press it solid when fitting it.")));
        }
    }

    private static void bowsInGuide(List<Finding> all, CompressionSpring spring, Duty duty) {
        Coil coil = spring.nominal();
        OptionalDouble critical = Buckling.criticalDeflection(spring.moduli(), coil.mean(), coil.free(), duty.seat());
        double needed = coil.free() - duty.atFull();
        if (duty.guided(coil) && critical.isPresent() && critical.getAsDouble() < needed) {
            all.add(new Finding.Caution(
                    Phrase.of(
                            "It leans on its guide from {} of deflection on.", Quantity.length(critical.getAsDouble())),
                    Phrase.of("So slim a spring would bow out if bore or rod did not hold it."),
                    Phrase.of("Smooth and oil the guide; expect some force lost to rubbing.")));
        }
    }

    private static void few(List<Finding> all, CompressionSpring spring) {
        double active = spring.nominal().active();
        if (FewCoils.matters(active)) {
            all.add(note(
                    Phrase.of("Only {} coils work.", Quantity.number(active)),
                    Phrase.of("With so few, real springs are stiffer than formulas say, and less alike."),
                    Phrase.of("Trust a weighing more than the figure here.")));
        }
    }

    private static void crooked(List<Finding> all, CompressionSpring spring) {
        boolean leftAsCut = spring.cut().map(c -> !c.newEnd().closed()).orElse(false);
        if (leftAsCut) {
            all.add(new Finding.Caution(
                    Phrase.of("The cut end will sit crooked and push sideways."),
                    Phrase.of("An end that is not closed touches its seat at the tip of the wire only."),
                    Phrase.of("Put a washer under it, or bend the last coil down and grind it flat, cool.")));
        }
    }

    /** Told by magnet, looks or weight, and not by its owner. */
    private static void stainless(List<Finding> all, CompressionSpring spring) {
        boolean told = spring.spring().seen().wire().isPresent()
                && spring.material().key() == SpringMaterial.Key.STAINLESS
                && SpringMaterial.named(spring.spring()).isEmpty();
        if (told) {
            all.add(new Finding.Caution(
                    Phrase.of("It is stainless, though it looks like steel."),
                    Phrase.of("Magnet, colour or weight say so. Stainless is softer and bears less."),
                    Phrase.of("The figures here are those of stainless.")));
        }
    }

    private static void unusualIndex(List<Finding> all, CompressionSpring spring) {
        double index = spring.nominal().index();
        if (index < INDEX_LOW || index > INDEX_HIGH) {
            all.add(note(
                    Phrase.of("Its coil is {} wires wide.", Quantity.number(index)),
                    Phrase.of(
                            "The formulas are tried from {} to {}.",
                            Quantity.number(INDEX_LOW),
                            Quantity.number(INDEX_HIGH)),
                    Phrase.of("Measure what force it gives before trusting it.")));
        }
    }

    private static Finding note(Phrase what, Phrase why, Phrase remedy) {
        return new Finding.Note(what, why, remedy);
    }
}
