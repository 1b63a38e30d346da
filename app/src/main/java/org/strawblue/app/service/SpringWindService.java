package org.strawblue.app.service;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.SpringMaterial;
import org.strawblue.core.spring.wind.StressRelief;
import org.strawblue.core.spring.wind.TrialCoil;
import org.strawblue.core.spring.wind.WindingPlan;

/** How is this spring wound? */
public final class SpringWindService {

    private SpringWindService() {}

    /** Arbor, turns, wire, pitch, heat, in the order of the work; cautions where they belong. */
    public static Sheet wind(Coil wanted, SpringMaterial material, Optional<TrialCoil> trial) {
        Answer<WindingPlan> plan = WindingPlan.of(wanted, material, trial);
        Sheet.Builder sheet = Sheet.titled("Winding a spring of " + material.name());
        plan.value().ifPresent(p -> write(sheet, p, trial.isPresent()));
        List<org.strawblue.core.estimate.Finding> findings =
                plan.value().map(WindingPlan::findings).orElse(plan.findings());
        return sheet.findings(findings).build();
    }

    private static void write(Sheet.Builder sheet, WindingPlan p, boolean tried) {
        sheet.add("arbor", tried ? "Arbor, by your trial" : "Arbor", p.arbor());
        given(sheet, "wire_length", "Wire to cut off", Quantity.length(p.wire()));
        sheet.add("turns", "Turns to wind", p.turns());
        given(sheet, "pitch", "Pitch while winding", Quantity.length(p.pitch()));
        given(sheet, "lathe_pitch", "Nearest lathe pitch", Quantity.length(p.lathe()));
        given(
                sheet,
                "as_wound",
                "Outside as wound",
                Quantity.length(p.asWound() + p.wanted().wire()));
        p.relief().ifPresent(r -> relief(sheet, r));
        given(
                sheet,
                "outside",
                "Outside when finished",
                Quantity.length(p.wanted().outside()));
        given(sheet, "coils", "Coils when finished", Quantity.number(p.wanted().total()));
        given(
                sheet,
                "free_length",
                "Length when finished",
                Quantity.length(p.wanted().free()));
    }

    private static void relief(Sheet.Builder sheet, StressRelief r) {
        sheet.add(new Entry.Words(
                "stress_relief",
                "Bake",
                Phrase.of(
                        "{} ({}) for {}", Quantity.temperature(r.temperature()), r.range(), Quantity.time(r.time()))));
        sheet.add(new Entry.Limits("diameter_change", "Diameter changes by", r.change()));
    }

    private static void given(Sheet.Builder sheet, String key, String label, Quantity quantity) {
        sheet.add(new Entry.Given(key, label, quantity));
    }
}
