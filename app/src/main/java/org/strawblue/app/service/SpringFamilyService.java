package org.strawblue.app.service;

import java.util.List;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.family.ClickSpring;
import org.strawblue.core.spring.family.DiscStack;
import org.strawblue.core.spring.family.ExtensionSpring;
import org.strawblue.core.spring.family.FamilyLimits;
import org.strawblue.core.spring.family.TorsionSpring;

/** Springs that are no compression springs of wire: what they do, and how far they may go. Sizes taken as exact. */
public final class SpringFamilyService {

    private static final Finding EXACT = new Finding.Note(
            Phrase.of("All sizes are taken as exact."),
            Phrase.of("What a calliper leaves open is not carried through for this kind of spring."),
            Phrase.of("Trust a weighing more than these figures."));

    private SpringFamilyService() {}

    /** @param strength least tensile strength of the wire; absent where no table knows it [Pa] */
    public static Sheet extension(ExtensionSpring s, OptionalDouble force, OptionalDouble strength) {
        Sheet.Builder sheet = Sheet.titled("Extension spring");
        given(sheet, "rate", "Rate", Dimension.STIFFNESS, s.rate());
        given(sheet, "initial_tension", "Initial tension", Dimension.FORCE, s.initialTension());
        sheet.add(new Entry.Limits(
                "initial_tension_usual", "Usual initial tension", ExtensionSpring.initialTension(s.wire(), s.mean())));
        given(sheet, "free_length", "Length inside the hooks", Dimension.LENGTH, s.freeLength());
        force.ifPresent(f -> {
            given(sheet, "deflection", "Gives", Dimension.LENGTH, Math.max(0, f - s.initialTension()) / s.rate());
            given(sheet, "body_stress", "Stress in the body", Dimension.STRESS, s.bodyStress(f));
            given(sheet, "hook_bending", "Bending in the hook", Dimension.STRESS, s.hookBending(f));
            given(sheet, "hook_torsion", "Torsion in the hook", Dimension.STRESS, s.hookTorsion(f));
        });
        strength.ifPresent(r -> {
            double most = FamilyLimits.force(s, r);
            given(sheet, "bears", "Takes no set up to", Dimension.FORCE, most);
            sets(sheet, force, most, Dimension.FORCE);
        });
        return sheet.findings(List.of(EXACT)).build();
    }

    /** @param pin diameter of the pin it lies on [m] */
    public static Sheet torsion(TorsionSpring s, OptionalDouble moment, OptionalDouble pin, OptionalDouble strength) {
        Sheet.Builder sheet = Sheet.titled("Torsion spring");
        given(sheet, "rate", "Moment for a turn", Dimension.MOMENT, s.rate());
        given(sheet, "active_coils", "Working coils, legs counted", Dimension.NUMBER, s.active());
        moment.ifPresent(m -> wound(sheet, s, m, pin));
        strength.ifPresent(r -> {
            double most = s.momentAt(FamilyLimits.torsion(r));
            given(sheet, "bears", "Takes no set up to", Dimension.MOMENT, most);
            given(sheet, "bears_turns", "Turns at that", Dimension.NUMBER, s.turns(most));
            sets(sheet, moment, most, Dimension.MOMENT);
        });
        sheet.findings(List.of(new Finding.Caution(
                Phrase.of("Load it only so that its coils wind up."),
                Phrase.of("Opened, its inside is pulled, where winding has left pull already: it bears a fifth less."),
                Phrase.of("Where it must work both ways, use two, wound to opposite hands."))));
        return sheet.findings(List.of(EXACT)).build();
    }

    private static void wound(Sheet.Builder sheet, TorsionSpring s, double moment, OptionalDouble pin) {
        double body = s.bodyTurns(moment);
        given(sheet, "turns", "Turns", Dimension.NUMBER, s.turns(moment));
        given(sheet, "stress", "Bending stress", Dimension.STRESS, s.stress(moment));
        given(sheet, "wound_mean", "Mean diameter, wound up", Dimension.LENGTH, s.woundMean(body));
        given(sheet, "body_length", "Body grows to", Dimension.LENGTH, s.bodyLength(body));
        pin.ifPresent(p -> {
            double clear = s.clearance(p, body);
            given(sheet, "clearance", "Room left round the pin", Dimension.LENGTH, clear);
            if (clear <= 0) {
                sheet.findings(List.of(new Finding.Stop(
                        Phrase.of("It seizes on its pin of {}.", Quantity.length(p)),
                        Phrase.of("Wound up, its inside shrinks to {}.", Quantity.length(s.woundMean(body) - s.wire())),
                        Phrase.of("Take a thinner pin or a wider coil."))));
            }
        });
    }

    public static Sheet disc(DiscStack stack, double deflection, double between, double edges) {
        Sheet.Builder sheet = Sheet.titled("Disc springs");
        given(sheet, "free_length", "Stack, free", Dimension.LENGTH, stack.freeLength());
        given(sheet, "flat", "Flat after", Dimension.LENGTH, stack.greatestDeflection());
        given(sheet, "force", "Force", Dimension.FORCE, stack.force(deflection));
        sheet.add(new Entry.Limits(
                "force_with_friction",
                "Force, released to pressed",
                stack.forceWithFriction(deflection, between, edges)));
        double each = deflection / stack.series();
        given(sheet, "stress", "Stress at the middle line", Dimension.STRESS, stack.stress(deflection));
        given(
                sheet,
                "stress_inner",
                "Stress, lower inner edge",
                Dimension.STRESS,
                stack.disc().stressTwo(each));
        given(
                sheet,
                "stress_outer",
                "Stress, lower outer edge",
                Dimension.STRESS,
                stack.disc().stressThree(each));
        if (deflection > stack.greatestDeflection()) {
            sheet.findings(List.of(new Finding.Stop(
                    Phrase.of("The stack is flat before that."),
                    Phrase.of("It can give {} at most.", Quantity.length(stack.greatestDeflection())),
                    Phrase.of("Put more packs against each other, or ask for less travel."))));
        }
        return sheet.findings(List.of(EXACT)).build();
    }

    public static Sheet flat(ClickSpring s, double deflection) {
        Sheet.Builder sheet = Sheet.titled("Flat spring, held at one end");
        given(sheet, "rate", "Rate", Dimension.STIFFNESS, s.rate());
        given(sheet, "force", "Force", Dimension.FORCE, s.force(deflection));
        given(sheet, "stress", "Bending stress where it is held", Dimension.STRESS, s.stress(deflection));
        if (s.stiffer() > 1) {
            sheet.findings(List.of(new Finding.Note(
                    Phrase.of("So wide a strip may be stiffer by up to {}.", Quantity.fraction(s.stiffer() - 1)),
                    Phrase.of("It cannot curl across as a narrow beam does."),
                    Phrase.of("Weigh it before trusting the figure."))));
        }
        return sheet.findings(List.of(EXACT)).build();
    }

    private static void sets(Sheet.Builder sheet, OptionalDouble load, double most, Dimension dimension) {
        if (load.isPresent() && load.getAsDouble() > most) {
            sheet.findings(List.of(new Finding.Caution(
                    Phrase.of("It takes a set at {}.", new Quantity(dimension, load.getAsDouble())),
                    Phrase.of("Its wire bears up to {}.", new Quantity(dimension, most)),
                    Phrase.of("Use thicker wire, a wider coil or less load."))));
        }
    }

    private static void given(Sheet.Builder sheet, String key, String label, Dimension dimension, double value) {
        sheet.add(new Entry.Given(key, label, new Quantity(dimension, value)));
    }
}
