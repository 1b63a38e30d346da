package org.strawblue.core.spring.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.AllowableStress;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.ShearStress;

/**
 * Whether a spring has taken a set, will take one, or was pressed solid by its maker.
 *
 * <p>A set spring keeps its rate, which hangs on wire, coil and count alone, and loses length and force. Uncorrected stress at
 * solid above half the strength means that it was most likely set on purpose. Source: derived; shop practice from memory.
 */
final class SetSigns {

    private static final double LOSS = Practice.OF.number("set_loss");
    private static final double PRESET = Practice.OF.number("preset_from");

    private SetSigns() {}

    static List<Finding> of(MeasuredSpring s, CompressionSpring spring) {
        List<Finding> all = new ArrayList<>();
        s.seen().lengthBefore().ifPresent(before -> all.add(pressed(before, s.freeLength())));
        Optional<AllowableStress> bears = spring.allowable();
        bears.ifPresent(
                b -> atSolid(spring, b, s.seen().lengthBefore().isPresent()).ifPresent(all::add));
        return all;
    }

    private static Finding pressed(double before, double after) {
        double lost = (before - after) / before;
        return lost > LOSS
                ? new Finding.Caution(
                        Phrase.of(
                                "It is still taking a set: {} of its length went when it was pressed solid.",
                                Quantity.fraction(lost)),
                        Phrase.of(
                                "Its wire is strained beyond what it bears. The rate has stayed, length and force have not."),
                        Phrase.of("Press it solid until it gets no shorter, then measure its length again."))
                : new Finding.Note(
                        Phrase.of("It keeps its length when pressed solid."),
                        Phrase.of("So it has been set already, or was never strained beyond what it bears."),
                        Phrase.of("Nothing need be done."));
    }

    private static Optional<Finding> atSolid(CompressionSpring spring, AllowableStress bears, boolean tried) {
        Estimate stress = spring.stressAtSolid();
        if (stress.value() <= bears.stress() || tried) {
            return Optional.empty();
        }
        double force = spring.force(spring.solidLength().value()).value();
        double plain = ShearStress.uncorrected(
                force, spring.nominal().mean(), spring.nominal().wire());
        boolean preset = plain > PRESET * bears.strength();
        return Optional.of(
                preset
                        ? new Finding.Note(
                                Phrase.of("It was most likely pressed solid by its maker, or has set in use."),
                                Phrase.of(
                                        "Pressed solid its wire would be stressed to {}: hardly any spring keeps such length the first time.",
                                        stress.quantity()),
                                Phrase.of("Press it solid three times and measure again: the length should stay."))
                        : new Finding.Caution(
                                Phrase.of("It will take a set when it is first pressed solid."),
                                Phrase.of(
                                        "At solid {}, and {} is what its wire bears for certain.",
                                        stress.quantity(),
                                        new Quantity(Dimension.STRESS, bears.stress())),
                                Phrase.of("Press it solid three times before measuring its length.")));
    }
}
