package org.strawblue.core.spring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** One spring tried in one pocket: as it is, and cut in every way. */
final class SpringTrial {

    private static final double HOPELESS = 1e-3;

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
    private record Way(Optional<Cut> cut, Margins margins) {}

    /** Of the best way of using it; −1 where none keeps every limit. */
    double roughChance() {
        if (ruledOut().isPresent()) {
            return -1;
        }
        Duty duty = Duty.of(pocket, whole.moduli(), whole.allowable().orElseThrow());
        Margins asItIs = Margins.of(whole.nominal(), duty);
        return beyondCutting(asItIs, duty)
                ? -1
                : BestWay.of(inputs, duty, asItIs.kept())
                        .map(BestWay::probability)
                        .orElse(-1.0);
    }

    SpringVerdict judge() {
        Optional<Phrase> ruledOut = ruledOut();
        if (ruledOut.isPresent()) {
            return new SpringVerdict(whole, 0, List.of(ruledOut.get()), List.of());
        }
        Duty duty = Duty.of(pocket, whole.moduli(), whole.allowable().orElseThrow());
        Way asItIs = new Way(Optional.empty(), Margins.of(whole.nominal(), duty));
        Way best = beyondCutting(asItIs.margins(), duty) ? asItIs : best(asItIs, duty);
        double coarse = WorkingProbability.coarse().of(inputs, best.cut(), duty);
        boolean worthAsking = coarse >= HOPELESS || best.margins().kept();
        double probability = worthAsking ? WorkingProbability.fine().of(inputs, best.cut(), duty) : coarse;
        CompressionSpring state = CompressionSpring.of(spring, best.cut(), whole.material(), whole.moduli());
        List<Phrase> failures = failures(asItIs, best, duty);
        boolean hopeless = !failures.isEmpty() && probability < HOPELESS;
        return new SpringVerdict(
                state, probability, failures, hopeless ? List.of() : SpringCautions.of(state, pocket, duty));
    }

    /** The best that keeps every limit, else the one that comes nearest to it. */
    private Way best(Way asItIs, Duty duty) {
        Optional<BestWay> works = BestWay.of(inputs, duty, asItIs.margins().kept());
        return works.isPresent() ? way(works.get().cut(), duty) : nearest(asItIs, duty);
    }

    private Way nearest(Way asItIs, Duty duty) {
        return Cuts.of(whole.nominal()).stream()
                .map(c -> way(Optional.of(c), duty))
                .reduce(asItIs, (a, b) -> b.margins().worst() > a.margins().worst() ? b : a);
    }

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

    private Way way(Optional<Cut> cut, Duty duty) {
        return new Way(cut, Margins.of(inputs.nominal(cut), duty));
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
                    .ifPresent(
                            l -> all.add(new Failure(inputs.nominal(best.cut()), duty, best.cut(), takenFor()).of(l)));
        }
        if (FewCoils.matters(whole.nominal().active())) {
            all.add(Phrase.of(
                    "few coils: only {} work, and the formulas are unsure of so few",
                    Quantity.number(whole.nominal().active())));
        }
        return all;
    }

    /** What its wire is taken for by its looks, where its owner did not name it. */
    private String takenFor() {
        boolean byLooks =
                spring.seen().wire().isPresent() && SpringMaterial.named(spring).isEmpty();
        return byLooks ? "; it is taken for " + whole.material().name() + ", whatever it looks like" : "";
    }

    /** A slack spring is soft by that alone; it need not be said twice. */
    private List<Phrase> asItIs(Way way, Duty duty) {
        boolean slack = way.margins().get(Limit.REACHES) < 0;
        Failure failure = new Failure(whole.nominal(), duty, Optional.empty(), takenFor());
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
