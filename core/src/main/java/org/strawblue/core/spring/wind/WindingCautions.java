package org.strawblue.core.spring.wind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.AllowableStress;
import org.strawblue.core.spring.Bergstraesser;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.SpringMaterial;

/** What can hurt the winder, and what can spoil the spring. */
final class WindingCautions {

    private static final double BLOW = Practice.OF.si("blow_from", Dimension.LENGTH);
    private static final double BONES = Practice.OF.si("bones_from", Dimension.LENGTH);
    private static final double SETTINGS = Practice.OF.number("settings");
    private static final double TRIAL_COILS = Practice.OF.number("trial_coils");

    private WindingCautions() {}

    static List<Finding> of(
            Coil wanted, SpringMaterial material, Optional<StressRelief> relief, AllowableStress strength) {
        List<Finding> all = new ArrayList<>();
        all.add(whips(wanted.wire()));
        all.add(machine());
        all.add(letGo());
        all.add(new Finding.Note(
                Phrase.of("Wind a trial of {} coils first.", Quantity.number(TRIAL_COILS)),
                Phrase.of("No two coils of wire spring back alike."),
                Phrase.of("Bake it, measure it, and ask again with --trial-arbor and --trial-outside.")));
        relief.ifPresent(r -> all.add(bake(material, r)));
        if (atSolid(wanted, material) > strength.stress()) {
            all.add(new Finding.Caution(
                    Phrase.of("It will take a set when first pressed solid."),
                    Phrase.of(
                            "Its wire would bear {} then, and {} is what it stands for certain.",
                            stress(atSolid(wanted, material)),
                            stress(strength.stress())),
                    Phrase.of(
                            "Wind it longer than wanted, bake it, press it solid {} times, then measure.",
                            Quantity.number(SETTINGS))));
        }
        return all;
    }

    private static double atSolid(Coil wanted, SpringMaterial material) {
        return wanted.stress(material.stiffness(wanted.wire()).moduli(), new Bergstraesser(), wanted.solid());
    }

    private static Finding whips(double wire) {
        String harm = wire < BLOW ? "cuts the skin" : wire < BONES ? "strikes hard" : "breaks bones";
        return new Finding.Caution(
                Phrase.of("The wire whips when it gets loose; of {} it " + harm + ".", Quantity.length(wire)),
                Phrase.of("Every coil of it wants to be straight again, in the reel as on the arbor."),
                Phrase.of(
                        "Goggles on. Know where both ends are, hold the tail, stay out of the plane of the coil, and snip"
                                + " ends under a cloth."));
    }

    private static Finding machine() {
        return new Finding.Caution(
                Phrase.of("Wind by hand or in the slowest back gear, never faster."),
                Phrase.of("A glove or a sleeve caught by moving wire goes round with it, and so does the hand."),
                Phrase.of(
                        "No gloves at a running lathe; guide the wire with a grooved block, and stop the spindle, not the"
                                + " wire, when something snags."));
    }

    private static Finding letGo() {
        return new Finding.Caution(
                Phrase.of("The coil spins open when its last turn is let go."),
                Phrase.of("It unwinds by a part of every turn at once, with a sharp end on the outside."),
                Phrase.of("Turn the spindle back by hand until the pull is gone before you cut anything."));
    }

    private static Finding bake(SpringMaterial material, StressRelief relief) {
        boolean opens = relief.change().middle() > 0;
        return new Finding.Note(
                Phrase.of(
                        "Bake at {} for {} after winding.",
                        Quantity.temperature(relief.temperature()),
                        Quantity.time(relief.time())),
                Phrase.of("It takes the strain of winding out. A coil of " + material.name()
                        + (opens ? " opens" : " closes") + " a little by it; the arbor allows for that."),
                relief.limit().isPresent()
                        ? Phrase.of(
                                "Never above {}: it goes soft.",
                                Quantity.temperature(relief.limit().get()))
                        : Phrase.of(
                                "Bake before grinding and pressing solid. Never bring drawn wire to a red heat: it goes soft."));
    }

    private static Quantity stress(double pascal) {
        return new Quantity(Dimension.STRESS, pascal);
    }
}
