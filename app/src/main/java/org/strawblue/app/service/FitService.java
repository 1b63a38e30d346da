package org.strawblue.app.service;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.fit.Chain;
import org.strawblue.core.fit.Expansion;
import org.strawblue.core.fit.Fit;
import org.strawblue.core.fit.Fits;
import org.strawblue.core.fit.HoleTool;
import org.strawblue.core.fit.Instrument;
import org.strawblue.core.fit.Matching;
import org.strawblue.core.fit.PreferredFit;
import org.strawblue.core.fit.Warming;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** Questions about a hole and what goes into it. */
public final class FitService {

    private static final Finding AS_MEASURED = new Finding.Note(
            Phrase.of("What hardening does is not counted here."),
            Phrase.of("Measured parts are taken as they are now."),
            Phrase.of("Ask without --hole and --shaft for what to make before hardening; measure again after it."));

    private FitService() {}

    /**
     * What was asked; what is absent was not told.
     *
     * @param nominal [m]
     * @param fit as written, or a purpose
     * @param hole measured, with its error [m]
     * @param shaft measured, with its error [m]
     * @param making instrument by which the part still to be made will be measured
     * @param kelvin temperature the pair works at [K]
     * @param hardened what is done to either part after it was made
     * @param inch whether a purpose means the inch class
     */
    public record Asked(
            OptionalDouble nominal,
            Optional<String> fit,
            Optional<Estimate> hole,
            Optional<Estimate> shaft,
            Instrument making,
            Expansion holeMetal,
            Expansion shaftMetal,
            OptionalDouble kelvin,
            Optional<HardenedFit> hardened,
            boolean inch) {

        double size() {
            return nominal.orElseGet(
                    () -> hole.or(() -> shaft).map(Estimate::value).orElseThrow());
        }
    }

    public static Sheet fit(Asked asked) {
        Optional<Answer<Fit>> answer = asked.fit().map(f -> Fits.of(asked.size(), f, asked.inch()));
        Optional<Fit> fit = answer.flatMap(Answer::value);
        Sheet.Builder sheet = Sheet.titled(fit.map(FitService::title).orElse("Hole and shaft as measured"));
        sheet.add(new Entry.Given("size", "Size", Quantity.length(asked.size())));
        answer.ifPresent(a -> sheet.findings(a.findings()));
        if (asked.hole().isPresent() || asked.shaft().isPresent()) {
            measured(sheet, asked, fit);
        } else {
            fit.ifPresent(f -> toMake(sheet, asked, f));
        }
        return sheet.build();
    }

    private static String title(Fit fit) {
        return "Fit " + fit.designation()
                + PreferredFit.designated(fit.designation())
                        .map(p -> ": " + p.word())
                        .orElse("");
    }

    private static void toMake(Sheet.Builder sheet, Asked asked, Fit fit) {
        String end = asked.hardened().isPresent() ? ", finished" : "";
        sheet.add(new Entry.Limits("hole", "Hole" + end, fit.hole()))
                .add(new Entry.Limits("shaft", "Shaft" + end, fit.shaft()));
        play(sheet, fit);
        PreferredFit.designated(fit.designation())
                .ifPresent(p -> sheet.add(new Entry.Words("use", "Good for", Phrase.of(p.use()))));
        tools(asked, fit).forEach(t -> sheet.add(new Entry.Words("tool", t.label(), t.words())));
        asked.hardened().ifPresent(h -> h.tell(sheet, fit));
        warm(sheet, asked, fit.likely());
    }

    /** A hard hole cannot be reamed. */
    private static List<HoleTool> tools(Asked asked, Fit fit) {
        boolean hard = asked.hardened().map(HardenedFit::hole).orElse(false);
        return hard ? HoleTool.hard(fit.nominal(), fit.hole()) : HoleTool.soft(fit.nominal(), fit.hole());
    }

    /** Said as play where there is some, as interference where there is none. */
    private static void play(Sheet.Builder sheet, Fit fit) {
        Band c = fit.clearance();
        if (fit.kind() == Fit.Kind.INTERFERENCE) {
            Estimate e = fit.likely();
            sheet.add(new Entry.Limits("interference", "Interference", negative(c)))
                    .add(
                            "likely_interference",
                            "Most likely",
                            Estimate.of(Dimension.LENGTH, -e.value(), -e.high(), -e.low(), e.bases()));
        } else {
            sheet.add(new Entry.Limits("clearance", "Clearance", c))
                    .add("likely_clearance", "Most likely", fit.likely());
        }
        sheet.add(new Entry.Words("kind", "Kind", Phrase.of(fit.kind().words())));
        if (fit.kind() == Fit.Kind.TRANSITION) {
            sheet.add(new Entry.Given("chance_of_play", "Chance of play", Quantity.fraction(fit.chanceOfPlay())));
        }
    }

    private static Band negative(Band band) {
        return new Band(band.dimension(), -band.high(), -band.low());
    }

    private static void measured(Sheet.Builder sheet, Asked asked, Optional<Fit> fit) {
        asked.hole().ifPresent(h -> sheet.add("measured_hole", "Hole, measured", h));
        asked.shaft().ifPresent(s -> sheet.add("measured_shaft", "Shaft, measured", s));
        Optional<Band> wanted = fit.map(Fit::clearance);
        wanted.ifPresent(w -> sheet.add(new Entry.Limits("wanted", "Clearance wanted", w)));
        asked.hardened().ifPresent(h -> sheet.findings(List.of(AS_MEASURED)));
        if (asked.hole().isPresent() && asked.shaft().isPresent()) {
            both(sheet, asked, wanted);
        } else {
            wanted.ifPresent(w -> other(sheet, asked, w));
        }
    }

    private static void both(Sheet.Builder sheet, Asked asked, Optional<Band> wanted) {
        Estimate hole = asked.hole().orElseThrow();
        Estimate shaft = asked.shaft().orElseThrow();
        Chain chain = Matching.measured(hole, shaft);
        Estimate clearance = chain.estimate(java.util.stream.Stream.of(hole, shaft)
                .flatMap(e -> e.bases().stream())
                .toList());
        sheet.add("clearance", "Clearance", clearance)
                .add(new Entry.Given(
                        "chance_of_play", "Chance that it goes in", Quantity.fraction(chain.chanceAbove(0))));
        wanted.ifPresent(w -> sheet.add(new Entry.Given(
                "chance_wanted", "Chance that it is as wanted", Quantity.fraction(chain.chanceWithin(w)))));
        warm(sheet, asked, clearance);
    }

    private static void other(Sheet.Builder sheet, Asked asked, Band wanted) {
        double error = asked.making().half();
        Answer<Band> size = asked.hole()
                .map(h -> Matching.shaftFor(h, wanted, error))
                .orElseGet(() -> Matching.holeFor(asked.shaft().orElseThrow(), wanted, error));
        String part = asked.hole().isPresent() ? "shaft" : "hole";
        size.value()
                .ifPresent(b -> sheet.add(new Entry.Limits(part, "Make the " + part + " to measure", b))
                        .add(new Entry.Words(
                                "by",
                                "Measured by",
                                Phrase.of(asked.making().name() + ", good to {} either way", Quantity.length(error)))));
        sheet.findings(size.findings());
    }

    private static void warm(Sheet.Builder sheet, Asked asked, Estimate clearance) {
        asked.kelvin().ifPresent(t -> {
            Estimate then = Expansion.clearanceAt(clearance, asked.size(), asked.holeMetal(), asked.shaftMetal(), t);
            sheet.add(new Entry.Given("working_temperature", "At work at", Quantity.temperature(t)))
                    .add("clearance_at_work", "Clearance there", then);
            sheet.findings(Warming.atWork(clearance, then, t));
        });
        if (clearance.value() < 0) {
            Warming.toAssemble(clearance, asked.size(), asked.holeMetal()).ifPresent(w -> {
                sheet.add(new Entry.Given("warm_to", "Drops in with the hole at", Quantity.temperature(w.kelvin())));
                sheet.findings(w.findings());
            });
        }
    }

    /** What a chain of sizes comes to. */
    public static Sheet chain(Chain chain, Band allowed) {
        Estimate gap = chain.estimate(List.of());
        Band worst = chain.worstCase();
        Sheet.Builder sheet = Sheet.titled("Chain of " + chain.links().size() + " sizes")
                .add(new Entry.Limits("worst_case", "All at their worst", worst))
                .add("gap", "Most likely", gap);
        chain.links()
                .forEach(l -> sheet.add(new Entry.Words(
                        "share_" + (chain.links().indexOf(l) + 1),
                        "  share of " + l.part(),
                        Phrase.of("{} of the spread", Quantity.fraction(share(chain, l))))));
        if (Double.isFinite(allowed.low()) || Double.isFinite(allowed.high())) {
            sheet.add(new Entry.Limits("allowed", "Has to be", allowed))
                    .add(new Entry.Given(
                            "chance", "Chance that it is", Quantity.fraction(chain.chanceWithin(allowed))));
        }
        return sheet.build();
    }

    private static double share(Chain chain, org.strawblue.core.fit.Link link) {
        double all = chain.deviation() * chain.deviation();
        return all == 0 ? 0 : link.weight() * link.weight() * link.spread().variance() / all;
    }
}
