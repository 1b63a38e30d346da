package org.strawblue.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.Cut;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.SpringSearch;
import org.strawblue.core.spring.SpringVerdict;

/** Questions about compression springs. */
public final class SpringService {

    private SpringService() {}

    /** What does this spring do? */
    public static Sheet spring(MeasuredSpring measured) {
        CompressionSpring spring = CompressionSpring.of(measured, Optional.empty(), OptionalDouble.empty());
        return figures(Sheet.titled("Compression spring: " + measured.name()), spring)
                .build();
    }

    /** What does this spring do in this pocket, and does it work there? */
    public static Sheet inPocket(MeasuredSpring measured, Pocket pocket) {
        SpringVerdict verdict = SpringSearch.rank(pocket, List.of(measured)).get(0);
        CompressionSpring spring = verdict.spring();
        Sheet.Builder sheet = figures(Sheet.titled(measured.name() + " in " + pocket.name()), spring);
        sheet.add("force_at_rest", "Force at rest", spring.force(pocket.lengthAtRest()))
                .add("force_at_full_travel", "Force at full travel", spring.force(pocket.lengthAtFullTravel()))
                .add("stress_at_full_travel", "Stress at full travel", spring.stress(pocket.lengthAtFullTravel()))
                .add("outside_at_full_travel", "Outside at full travel", spring.outside(pocket.lengthAtFullTravel()))
                .add(new Entry.Words("verdict", "Verdict", words(verdict)))
                .add(new Entry.Given("chance", "Chance that it works", Quantity.fraction(verdict.probability())));
        return sheet.findings(verdict.cautions()).build();
    }

    /** Which springs of a drawer work in this pocket? The likeliest first. */
    public static Sheet drawer(List<MeasuredSpring> drawer, Pocket pocket) {
        Sheet.Builder sheet = Sheet.titled("Springs for " + pocket.name());
        for (SpringVerdict verdict : SpringSearch.rank(pocket, drawer)) {
            MeasuredSpring spring = verdict.spring().spring();
            String key = spring.row() == 0 ? spring.name() : "row " + spring.row();
            sheet.add(new Entry.Words(key, spring.name(), words(verdict)));
        }
        return sheet.build();
    }

    private static Sheet.Builder figures(Sheet.Builder sheet, CompressionSpring spring) {
        sheet.add("rate", "Rate", spring.rate())
                .add("free_length", "Free length", spring.freeLength())
                .add("solid_length", "Solid length", spring.solidLength())
                .add("stress_at_solid", "Stress at solid", spring.stressAtSolid())
                .add("surge", "Surge frequency", spring.surge());
        spring.forceAtSet().ifPresent(e -> sheet.add("force_at_set", "Takes a set from", e));
        return sheet;
    }

    /** "works as it is, chance 90 %"; "works cut by 2 coils"; or why not. */
    private static Phrase words(SpringVerdict verdict) {
        List<Phrase> parts = new ArrayList<>();
        Optional<Cut> cut = verdict.spring().cut();
        String state = cut.isPresent() ? "cut by {} coils" : "as it is";
        Amount[] removed =
                cut.map(c -> new Amount[] {Quantity.number(c.removed())}).orElse(new Amount[0]);
        if (verdict.works()) {
            parts.add(Phrase.of("works " + state, removed));
            parts.add(Phrase.of("chance {}", Quantity.fraction(verdict.probability())));
        } else {
            parts.add(Phrase.of("fails, best " + state, removed));
            parts.addAll(verdict.failures());
        }
        return joined(parts);
    }

    private static Phrase joined(List<Phrase> parts) {
        String template = parts.stream().map(Phrase::template).collect(Collectors.joining("; "));
        List<Amount> amounts = parts.stream().flatMap(p -> p.amounts().stream()).toList();
        return new Phrase(template, amounts);
    }
}
