package org.strawblue.app.service;

import org.strawblue.core.estimate.Answer;
import org.strawblue.core.heat.Hardening;
import org.strawblue.core.heat.HardeningPlan;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenchants;
import org.strawblue.core.steel.Quenched;

/** Questions about hardening. */
public final class HardenService {

    private HardenService() {}

    /** How is this part hardened in this quench with this heat, and what comes out? */
    public static Sheet harden(Grade grade, PartShape shape, Quenchant quench, HeatSource source) {
        return sheet(grade, Hardening.plan(grade, shape, quench, source));
    }

    /** The same, in the quench of all known ones that suits the part best. */
    public static Sheet harden(Grade grade, PartShape shape, HeatSource source) {
        return sheet(
                grade,
                Hardening.chooseQuench(grade, shape, Quenchants.all())
                        .then(quench -> Hardening.plan(grade, shape, quench, source)));
    }

    private static Sheet sheet(Grade grade, Answer<HardeningPlan> answer) {
        Sheet.Builder sheet = Sheet.titled("Hardening " + grade.name());
        answer.value().ifPresent(plan -> {
            way(sheet, plan);
            outcome(sheet, plan.quenched());
        });
        return sheet.findings(answer.findings()).build();
    }

    private static void way(Sheet.Builder sheet, HardeningPlan plan) {
        sheet.add(new Entry.Words("heat", "Heat", Phrase.of(plan.source().name())));
        sheet.add(new Entry.Words("quench", "Quench", Phrase.of(plan.quench().name())));
        plan.preheat().ifPresent(e -> sheet.add("preheat", "Preheat", e));
        plan.secondPreheat().ifPresent(e -> sheet.add("second_preheat", "Second preheat", e));
        sheet.add("austenitise", "Harden from", plan.austenitise())
                .add("heat_through", "Time to heat through", plan.heatThrough())
                .add("soak", "Soak after that", plan.soak())
                .add("ac1", "Lower critical point Ac1", plan.critical().ac1())
                .add("magnet", "Magnet lets go at", plan.magnet())
                .add("martensite_start", "Martensite starts at", plan.martensiteStart());
        plan.toBath().ifPresent(e -> sheet.add("to_bath", "Fire to bath within", e));
    }

    private static void outcome(Sheet.Builder sheet, Quenched quenched) {
        sheet.add("surface", "Surface as quenched", quenched.surface())
                .add("centre", "Centre as quenched", quenched.centre())
                .add("depth", "Hard to a depth of", quenched.depth())
                .add("retained_austenite", "Retained austenite", quenched.retained())
                .add(new Entry.Given("through", "Chance of hard to the centre", Quantity.fraction(quenched.through())))
                .add(new Entry.Given("skin", "Chance of a hard surface", Quantity.fraction(quenched.skin())));
    }
}
