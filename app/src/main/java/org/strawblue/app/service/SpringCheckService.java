package org.strawblue.app.service;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.AllowableStress;
import org.strawblue.core.spring.Buckling;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.EndsFree;
import org.strawblue.core.spring.EndsHeld;
import org.strawblue.core.spring.GoodmanFatigue;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.PocketCheck;
import org.strawblue.core.spring.Relaxation;
import org.strawblue.core.spring.Seating;
import org.strawblue.core.spring.SpringSearch;
import org.strawblue.core.spring.SpringVerdict;

/** One spring in one pocket, as it is: every limit with its figure. */
public final class SpringCheckService {

    private SpringCheckService() {}

    public static Sheet check(MeasuredSpring measured, Pocket pocket) {
        CompressionSpring spring = CompressionSpring.of(measured, Optional.empty(), pocket.temperature());
        Sheet.Builder sheet = Sheet.titled(measured.name() + " in " + pocket.name());
        SpringVerdict verdict = SpringSearch.rank(pocket, List.of(measured)).get(0);
        boolean works = SpringSearch.worksAsItIs(spring, pocket);
        sheet.add(new Entry.Words("verdict", "As it is", verdict(works, verdict)));
        sheet.add(new Entry.Given(
                "chance", "Chance that it works", Quantity.fraction(SpringSearch.chance(spring, pocket, false))));
        forces(sheet, spring, pocket);
        room(sheet, spring, pocket);
        strength(sheet, spring, pocket);
        sheet.add("rate", "Rate", spring.rate()).add("surge", "Surge frequency", spring.surge());
        pocket.screw()
                .ifPresent(s -> sheet.add(
                        "force_per_turn", "A turn of the " + s.thread() + " screw", s.forcePerTurn(spring.rate())));
        return sheet.findings(PocketCheck.findings(pocket))
                .findings(works ? SpringSearch.cautions(spring, pocket) : List.of())
                .build();
    }

    private static Phrase verdict(boolean works, SpringVerdict verdict) {
        if (works) {
            return Phrase.of("keeps every limit");
        }
        return verdict.works()
                ? Phrase.of(
                        "breaks a limit; works cut by {} coils (see  spring cut)",
                        Quantity.number(verdict.spring().cut().orElseThrow().removed()))
                : Phrases.joined("; ", verdict.failures());
    }

    private static void forces(Sheet.Builder sheet, CompressionSpring spring, Pocket pocket) {
        sheet.add("force_at_rest", "Force at rest", spring.force(pocket.lengthAtRest()));
        pocket.forceAtRest().ifPresent(b -> wanted(sheet, "wanted_at_rest", "Wanted at rest", b));
        sheet.add("force_at_full_travel", "Force at full travel", spring.force(pocket.lengthAtFullTravel()));
        pocket.forceAtFullTravel().ifPresent(b -> wanted(sheet, "wanted_at_full_travel", "Wanted at full travel", b));
    }

    private static void wanted(Sheet.Builder sheet, String key, String label, Band band) {
        sheet.add(new Entry.Limits(key, label, band));
    }

    private static void room(Sheet.Builder sheet, CompressionSpring spring, Pocket pocket) {
        Coil coil = spring.nominal();
        double full = pocket.lengthAtFullTravel();
        sheet.add("solid_length", "Solid length", spring.solidLength());
        given(sheet, "gaps_left", "Gaps left at full travel", full - coil.solid());
        given(sheet, "gaps_needed", "Gaps needed", coil.leastGap(false));
        sheet.add("outside_at_full_travel", "Outside at full travel", spring.outside(full));
        given(sheet, "outside_ends_held", "Outside, ends held", coil.outsideAt(spring.moduli(), new EndsHeld(), full));
        given(
                sheet,
                "outside_ends_free",
                "Outside, ends free to turn",
                coil.outsideAt(spring.moduli(), new EndsFree(), full));
        given(
                sheet,
                "outside_widest",
                "Outside, widest coil",
                CompressionSpring.widestOutside(coil, spring.moduli(), full));
        pocket.bore().ifPresent(b -> given(sheet, "bore", "Bore", b));
        pocket.rod().ifPresent(r -> {
            given(sheet, "inside", "Inside, free", coil.inside());
            given(sheet, "rod", "Rod", r);
        });
        OptionalDouble bows = Buckling.criticalDeflection(
                spring.moduli(), coil.mean(), coil.free(), pocket.seating().orElse(Seating.BOTH_FLAT));
        given(sheet, "deflection", "Pressed by, at full travel", coil.free() - full);
        if (bows.isPresent()) {
            given(sheet, "bows_from", "Bows out from", bows.getAsDouble());
        } else {
            sheet.add(new Entry.Words("bows_from", "Bows out from", Phrase.of("never, it is too stout")));
        }
    }

    private static void strength(Sheet.Builder sheet, CompressionSpring spring, Pocket pocket) {
        Estimate stress = spring.stress(pocket.lengthAtFullTravel());
        sheet.add("stress_at_full_travel", "Stress at full travel", stress);
        Optional<AllowableStress> bears = spring.allowable();
        bears.ifPresent(a -> {
            sheet.add(new Entry.Given("bears", "Wire bears", new Quantity(Dimension.STRESS, a.stress())));
            double rest = spring.stress(pocket.lengthAtRest()).value();
            double amplitude = (stress.value() - rest) / 2;
            if (pocket.cycles().isPresent() && amplitude > 0) {
                double safety = new GoodmanFatigue().safety(amplitude, stress.value() - amplitude, a.strength());
                sheet.add(new Entry.Given("fatigue_safety", "Safety against tiring", Quantity.number(safety)));
            }
        });
        if (pocket.temperature().isPresent() && bears.isPresent()) {
            Answer<Estimate> loss = Relaxation.loss(
                    spring.material(),
                    pocket.temperature().getAsDouble(),
                    Math.max(0, stress.value()) / bears.get().stress());
            loss.value().ifPresent(l -> sheet.add("slackens", "Slackens, held two days warm, by", l));
            sheet.findings(loss.findings());
        }
    }

    private static void given(Sheet.Builder sheet, String key, String label, double metres) {
        sheet.add(new Entry.Given(key, label, Quantity.length(metres)));
    }
}
