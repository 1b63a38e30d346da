package org.strawblue.app.service;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.SpringMaterial;
import org.strawblue.core.spring.identify.ErrorBudget;
import org.strawblue.core.spring.identify.Identification;

/** What is this spring? */
public final class SpringIdentifyService {

    private SpringIdentifyService() {}

    /**
     * Rate and where its doubt comes from, wire by odds, what it bears.
     *
     * @param shear modulus given by the owner
     * @param length whether its free length was given
     */
    public static Sheet identify(MeasuredSpring measured, Optional<Band> shear, boolean length) {
        Identification known = Identification.of(measured, shear);
        CompressionSpring spring = CompressionSpring.of(known.spring(), Optional.empty(), OptionalDouble.empty());
        Sheet.Builder sheet = Sheet.titled("What it is: " + measured.name());
        sheet.add("rate", "Rate", known.rate());
        if (known.byTest().isPresent()) {
            sheet.add("rate_by_sizes", "Rate by its sizes", known.bySizes());
            sheet.add("rate_by_test", "Rate by push test", known.byTest().get());
        }
        budget(sheet, known.budget());
        known.modulus().ifPresent(g -> sheet.add("implied_modulus", "Shear modulus implied", g));
        odds(sheet, known);
        spring.allowable()
                .ifPresent(a -> sheet.add(new Entry.Given(
                        "bears",
                        "Wire bears at least",
                        new Quantity(org.strawblue.core.quantity.Dimension.STRESS, a.stress()))));
        spring.forceAtSet().ifPresent(f -> sheet.add("force_at_set", "Takes a set from", f));
        if (length) {
            lengths(sheet, spring);
        }
        return sheet.findings(known.findings()).build();
    }

    private static void budget(Sheet.Builder sheet, ErrorBudget budget) {
        share(sheet, "doubt_wire", "Doubt: from the wire", budget.wire());
        share(sheet, "doubt_outside", "Doubt: from the outside", budget.outside());
        share(sheet, "doubt_coils", "Doubt: from the coil count", budget.coils());
        share(sheet, "doubt_modulus", "Doubt: from the modulus", budget.modulus());
        share(sheet, "doubt_total", "Doubt: all of it", budget.total());
    }

    private static void share(Sheet.Builder sheet, String key, String label, double share) {
        sheet.add(new Entry.Given(key, label, Quantity.fraction(share)));
    }

    private static void odds(Sheet.Builder sheet, Identification known) {
        List<SpringMaterial.Key> likely = known.odds().ranked();
        for (SpringMaterial.Key key : likely) {
            double odds = known.odds().of(key);
            String name = SpringMaterial.of(key).name();
            if (odds > 0.001) {
                sheet.add(new Entry.Given(
                        "odds_" + key.name().toLowerCase(java.util.Locale.ROOT),
                        "It is " + name,
                        Quantity.fraction(odds)));
            }
        }
    }

    private static void lengths(Sheet.Builder sheet, CompressionSpring spring) {
        Estimate solid = spring.solidLength();
        sheet.add("solid_length", "Solid length", solid)
                .add("force_at_solid", "Force when solid", spring.force(solid.value()))
                .add("stress_at_solid", "Stress when solid", spring.stressAtSolid());
    }
}
