package org.strawblue.core.spring.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.source.Basis;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.SpringMaterial;

/**
 * What a spring is, from sizes, push test and looks.
 *
 * @param bySizes rate from its sizes, modulus by the odds of its wire [N/m]
 * @param byTest rate from the push test; absent where there was none [N/m]
 * @param rate both together [N/m]
 * @param modulus G* that rate by test and sizes imply; absent without a test [Pa]
 * @param budget where the doubt in the rate by sizes comes from
 * @param spring the same spring, with wire and rate as told here
 */
public record Identification(
        MeasuredSpring spring,
        MaterialOdds odds,
        ErrorBudget budget,
        Estimate bySizes,
        Optional<Estimate> byTest,
        Estimate rate,
        Optional<Estimate> modulus,
        List<Finding> findings) {

    private static final double CONFLICT = Practice.OF.number("conflict_deviations");
    private static final double NAMED = Practice.OF.number("named");

    public Identification {
        findings = List.copyOf(findings);
    }

    public static Identification of(MeasuredSpring measured) {
        return of(measured, Optional.empty());
    }

    /** @param shear modulus that the owner gives in place of the tables' [Pa] */
    public static Identification of(MeasuredSpring measured, Optional<Band> shear) {
        MaterialOdds looks = shear.map(
                        g -> byLooks(measured).given(g.middle(), g.width() / 2 / g.middle(), measured.wire()))
                .orElse(byLooks(measured));
        Optional<Estimate> test = PushTest.rate(measured.seen().pushes());
        Optional<Estimate> modulus = test.map(t -> impliedModulus(measured, t));
        MaterialOdds odds = modulus.map(g -> looks.given(g.value(), half(g) / g.value(), measured.wire()))
                .orElse(looks);
        MeasuredSpring known =
                measured.with(measured.seen().identified(wire(odds, measured.wire(), shear), Optional.empty()));
        Estimate bySizes = CompressionSpring.of(known, Optional.empty(), OptionalDouble.empty())
                .rate();
        Estimate rate = test.map(t -> fused(bySizes, t)).orElse(bySizes);
        MeasuredSpring done = test.isPresent()
                ? measured.with(measured.seen().identified(known.seen().wire().orElseThrow(), Optional.of(rate)))
                : known;
        return new Identification(
                done, odds, budget(known), bySizes, test, rate, modulus, findings(done, odds, bySizes, test));
    }

    private static SpringMaterial wire(MaterialOdds odds, double diameter, Optional<Band> shear) {
        SpringMaterial plausible = PlausibleWire.of(odds, diameter);
        return shear.map(s -> plausible.stiffened(s, diameter)).orElse(plausible);
    }

    /** The spring as the search should take it: identified where there is anything to go by, else as it came. */
    public static MeasuredSpring resolved(MeasuredSpring measured) {
        return measured.seen().tells() ? of(measured).spring() : measured;
    }

    private static MaterialOdds byLooks(MeasuredSpring measured) {
        Optional<SpringMaterial> named = SpringMaterial.named(measured);
        MaterialOdds odds = MaterialOdds.prior();
        if (named.isPresent()) {
            odds = measured.seen().tells()
                    ? odds.leaning(named.get().key(), NAMED)
                    : MaterialOdds.certain(named.get().key());
        }
        for (Map.Entry<String, String> clue : measured.seen().clues().entrySet()) {
            odds = odds.given(clue.getKey(), clue.getValue());
        }
        return odds;
    }

    /** G* = 8 k D³ n/d⁴ in the classical rate: what the formula needs to give the rate of the test [Pa]. */
    private static Estimate impliedModulus(MeasuredSpring s, Estimate test) {
        Ends ends = s.ends().orElse(Ends.both(EndType.CLOSED));
        double active = s.totalCoils() - ends.inactive();
        double mean = s.outsideDiameter() - s.wire();
        double one = org.strawblue.core.spring.ModulusFromRate.of(test.value(), s.wire(), mean, active);
        ErrorBudget sizes = ErrorBudget.of(s.wire(), s.outsideDiameter(), active, s.allErrors(), 0);
        double share = Math.hypot(sizes.sizes(), half(test) / test.value());
        return Estimate.of(Dimension.STRESS, one, one * (1 - share), one * (1 + share), test.bases());
    }

    private static ErrorBudget budget(MeasuredSpring s) {
        SpringMaterial.Stiffness g = SpringMaterial.of(s).stiffness(s.wire());
        double active =
                s.totalCoils() - s.ends().orElse(Ends.both(EndType.CLOSED)).inactive();
        double modulus = (g.shearHigh() - g.shearLow()) / (g.shearHigh() + g.shearLow());
        return ErrorBudget.of(s.wire(), s.outsideDiameter(), active, s.allErrors(), modulus);
    }

    /** Weighed by the inverse square of their errors, as shares; where they contradict each other the test alone. */
    static Estimate fused(Estimate a, Estimate test) {
        if (contradict(a, test)) {
            return test;
        }
        double wa = 1 / square(half(a) / a.value());
        double wb = 1 / square(half(test) / test.value());
        double value = Math.exp((wa * Math.log(a.value()) + wb * Math.log(test.value())) / (wa + wb));
        double share = 1 / Math.sqrt(wa + wb);
        List<Basis> bases = new ArrayList<>(a.bases());
        bases.addAll(test.bases());
        return Estimate.of(Dimension.STIFFNESS, value, value * (1 - share), value * (1 + share), bases);
    }

    private static boolean contradict(Estimate a, Estimate b) {
        double deviation = Math.hypot(half(a) / a.value(), half(b) / b.value()) / Normal.HALF_OF_80;
        return Math.abs(Math.log(a.value() / b.value())) > CONFLICT * deviation;
    }

    private static List<Finding> findings(
            MeasuredSpring s, MaterialOdds odds, Estimate bySizes, Optional<Estimate> test) {
        List<Finding> all = new ArrayList<>();
        if (test.isPresent() && contradict(bySizes, test.get())) {
            all.add(new Finding.Caution(
                    Phrase.of(
                            "Sizes and push test contradict each other: {} and {}.",
                            bySizes.quantity(),
                            test.get().quantity()),
                    Phrase.of("They differ by more than their errors allow. The test is believed."),
                    Phrase.of("Count the coils and look at the ends again; measure the wire where it is bright.")));
        }
        CompressionSpring spring = CompressionSpring.of(s, Optional.empty(), OptionalDouble.empty());
        all.addAll(PushTest.findings(
                s.seen().pushes(), s.freeLength(), spring.solidLength().value()));
        all.addAll(SetSigns.of(s, spring));
        all.addAll(MaterialFindings.of(s, odds));
        return all;
    }

    private static double half(Estimate e) {
        return (e.high() - e.low()) / 2;
    }

    private static double square(double x) {
        return x * x;
    }
}
