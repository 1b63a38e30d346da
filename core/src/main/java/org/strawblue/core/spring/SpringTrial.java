package org.strawblue.core.spring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** One spring tried in one pocket: as it is, and cut in every way. */
final class SpringTrial {

    private static final double NEARLY = Figures.PRACTICE.number("nearly_as_good");
    private static final double HOPELESS = 1e-3;
    private static final int TRIED = 32;

    private final Pocket pocket;
    private final MeasuredSpring spring;
    private final CompressionSpring whole;
    private final MeasuredInputs inputs;

    SpringTrial(Pocket pocket, MeasuredSpring spring) {
        this.pocket = pocket;
        this.spring = spring;
        whole = CompressionSpring.of(spring, Optional.empty(), pocket.temperature());
        inputs = whole.inputs();
    }

    /** One way of using the spring. */
    private record Way(Optional<Cut> cut, double probability, Margins margins) {

        int squareness() {
            return cut.map(c -> c.newEnd().ordinal()).orElse(EndType.values().length);
        }
    }

    SpringVerdict judge() {
        Optional<Phrase> ruledOut = ruledOut();
        if (ruledOut.isPresent()) {
            return new SpringVerdict(whole, 0, List.of(ruledOut.get()), List.of());
        }
        Duty duty = Duty.of(pocket, whole.moduli(), whole.allowable().orElseThrow());
        Way asItIs = way(Optional.empty(), Margins.of(whole.nominal(), duty), duty);
        Way best = beyondCutting(asItIs.margins(), duty) ? asItIs : best(ways(asItIs, duty));
        boolean worthAsking = best.probability() >= HOPELESS || best.margins().kept();
        double probability = worthAsking ? WorkingProbability.fine().of(inputs, best.cut(), duty) : best.probability();
        CompressionSpring state = CompressionSpring.of(spring, best.cut(), whole.material(), whole.moduli());
        List<Phrase> failures = failures(asItIs, best, duty);
        boolean hopeless = !failures.isEmpty() && probability < HOPELESS;
        return new SpringVerdict(
                state, probability, failures, hopeless ? List.of() : SpringCautions.of(state, pocket, duty));
    }

    /** The spring as it is and the cuts that come nearest to keeping every limit. */
    private List<Way> ways(Way asItIs, Duty duty) {
        List<Way> ways = new ArrayList<>(List.of(asItIs));
        Cuts.of(whole.nominal()).stream()
                .map(c -> new Nearness(c, Margins.of(inputs.nominal(Optional.of(c)), duty)))
                .sorted(Comparator.comparingDouble((Nearness n) -> n.margins().worst())
                        .reversed())
                .limit(TRIED)
                .forEach(n -> ways.add(way(Optional.of(n.cut()), n.margins(), duty)));
        return ways;
    }

    private record Nearness(Cut cut, Margins margins) {}

    /** What no cutting and no measuring mends. */
    private Optional<Phrase> ruledOut() {
        Coil coil = whole.nominal();
        if (coil.active() <= 0 || coil.pitch() < coil.wire()) {
            return Optional.of(Phrase.of(
                    "the figures disagree: {} coils of {} wire are already {} long when they touch",
                    Quantity.number(coil.total()),
                    Quantity.length(coil.wire()),
                    Quantity.length(coil.solid())));
        }
        if (pocket.temperature().orElse(0) > whole.material().hottest()) {
            return Optional.of(Phrase.of(
                    "goes slack with heat: " + whole.material().name() + " serves up to {}",
                    Quantity.temperature(whole.material().hottest())));
        }
        return whole.allowable().isPresent()
                ? Optional.empty()
                : Optional.of(Phrase.of(
                        "no strength is known for " + whole.material().name() + " of {}",
                        Quantity.length(coil.wire())));
    }

    /**
     * Whether it breaks a limit that every cut would break as well. Softness is one: at a given length a cut spring
     * pushes less, since what it loses in free length weighs more than what it gains in stiffness.
     */
    private boolean beyondCutting(Margins margins, Duty duty) {
        return margins.get(Limit.REACHES) < 0
                || margins.get(Limit.FIRM_AT_REST) < 0
                || margins.get(Limit.FIRM_AT_FULL_TRAVEL) < 0
                || margins.get(Limit.GOES_OVER_ROD) < 0
                || whole.nominal().outside() > duty.bore();
    }

    private Way way(Optional<Cut> cut, Margins margins, Duty duty) {
        return new Way(cut, WorkingProbability.coarse().of(inputs, cut, duty), margins);
    }

    private static Way best(List<Way> ways) {
        Way likeliest = ways.stream()
                .max(Comparator.comparingDouble(Way::probability)
                        .thenComparingDouble(w -> w.margins().worst()))
                .orElseThrow();
        if (likeliest.probability() < HOPELESS) {
            return ways.stream()
                    .max(Comparator.comparingDouble(w -> w.margins().worst()))
                    .orElseThrow();
        }
        return ways.stream()
                .filter(w -> w.margins().kept() == likeliest.margins().kept())
                .filter(w -> w.probability() >= likeliest.probability() - NEARLY)
                .max(Comparator.comparingInt(Way::squareness).thenComparingDouble(Way::probability))
                .orElse(likeliest);
    }

    /** What the uncut spring breaks, and what stands in the way of the best cut. */
    private List<Phrase> failures(Way asItIs, Way best, Duty duty) {
        if (best.margins().kept()) {
            return List.of();
        }
        List<Phrase> all = new ArrayList<>(asItIs(asItIs, duty));
        if (best.cut().isPresent()) {
            broken(best.margins()).stream()
                    .filter(l -> asItIs.margins().get(l) >= 0)
                    .findFirst()
                    .ifPresent(l -> all.add(new Failure(inputs.nominal(best.cut()), duty, best.cut()).of(l)));
        }
        return all;
    }

    /** A slack spring is soft by that alone; it need not be said twice. */
    private List<Phrase> asItIs(Way way, Duty duty) {
        boolean slack = way.margins().get(Limit.REACHES) < 0;
        Failure failure = new Failure(whole.nominal(), duty, Optional.empty());
        return broken(way.margins()).stream()
                .filter(l -> !slack || l != Limit.FIRM_AT_REST && l != Limit.FIRM_AT_FULL_TRAVEL)
                .map(failure::of)
                .toList();
    }

    private static List<Limit> broken(Margins margins) {
        List<Limit> broken = new ArrayList<>();
        for (Limit limit : Limit.values()) {
            if (margins.get(limit) < 0) {
                broken.add(limit);
            }
        }
        broken.sort(Comparator.comparingDouble(margins::get));
        return broken;
    }
}
