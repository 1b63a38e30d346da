package org.strawblue.core.spring.identify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.MeasurementErrors;
import org.strawblue.core.spring.ModulusFromRate;
import org.strawblue.core.spring.PushReading;
import org.strawblue.core.spring.Seen;
import org.strawblue.core.spring.SpringMaterial.Key;

/** The reference's worked error budget; materials told by modulus, magnet and colour; springs that have set. */
class IdentificationTest {

    private static MeasuredSpring spring(Seen seen, Optional<String> material, double free) {
        return new MeasuredSpring(
                "s",
                1,
                0.001,
                0.009,
                free,
                8,
                Optional.of(Ends.both(EndType.CLOSED_GROUND)),
                material,
                MeasurementErrors.usual(),
                1,
                seen);
    }

    private static Seen seen(Map<String, String> clues, List<PushReading> pushes) {
        return Seen.of(clues, pushes, Optional.empty(), Optional.empty());
    }

    /** A straight line of readings from the free length [m], rate [N/m]. */
    private static List<PushReading> pushes(double free, double rate) {
        return List.of(
                new PushReading(free - 0.004, rate * 0.004),
                new PushReading(free - 0.008, rate * 0.008),
                new PushReading(free - 0.012, rate * 0.012));
    }

    /** d 1.00 ± 0.01, outside 9.00 ± 0.05, 6 ± ¼ working coils, G 80 ± 1.5 GPa: worked by hand in the research notes. */
    @Test
    void givesTheWorkedErrorBudget() {
        MeasurementErrors errors = new MeasurementErrors(1e-5, 5e-5, 2e-4, 0.25);
        ErrorBudget budget = ErrorBudget.of(0.001, 0.009, 6, errors, 1.5 / 80);
        assertThat(100 * budget.wire()).isCloseTo(4.4, within(0.05));
        assertThat(100 * budget.outside()).isCloseTo(1.9, within(0.05));
        assertThat(100 * budget.coils()).isCloseTo(4.2, within(0.05));
        assertThat(100 * budget.modulus()).isCloseTo(1.9, within(0.05));
        assertThat(100 * budget.total()).isCloseTo(6.6, within(0.05));
    }

    @Test
    void theUsualErrorsAreThoseOfTheWorkedCase() {
        Identification known = Identification.of(spring(Seen.nothing(), Optional.of("music wire"), 0.03));
        assertThat(100 * known.budget().sizes()).isCloseTo(6.3, within(0.1));
        assertThat(known.byTest()).isEmpty();
        assertThat(known.rate()).isEqualTo(known.bySizes());
    }

    /** 20 gf and 0.1 mm over 10 N and 10 mm: about 3 %, as the research notes work it out. */
    @Test
    void aPushTestIsGoodForAboutThreeInAHundred() {
        List<PushReading> two = List.of(new PushReading(0.02, 0), new PushReading(0.01, 10));
        var rate = PushTest.rate(two).orElseThrow();
        assertThat(rate.value()).isCloseTo(1000, within(1e-9));
        double share = (rate.high() - rate.value()) / rate.value();
        assertThat(share).isBetween(0.02, 0.04);
    }

    @Test
    void aPushTestNeedsTwoLengthsAndAForceThatGrows() {
        assertThat(PushTest.rate(List.of(new PushReading(0.02, 1)))).isEmpty();
        assertThat(PushTest.rate(List.of(new PushReading(0.02, 1), new PushReading(0.02, 2))))
                .isEmpty();
        assertThat(PushTest.rate(List.of(new PushReading(0.02, 2), new PushReading(0.01, 1))))
                .isEmpty();
    }

    @Test
    void readingsThatScatterWidenTheRate() {
        List<PushReading> straight = pushes(0.03, 1500);
        List<PushReading> bent = List.of(straight.get(0), new PushReading(0.022, 15), straight.get(2));
        assertThat(PushTest.rate(bent).orElseThrow().band().width())
                .isGreaterThan(3 * PushTest.rate(straight).orElseThrow().band().width());
    }

    /** Moduli of the handbook: bronze has half of steel's, so its rate gives it away whatever the looks. */
    @Test
    void bronzeIsToldByItsRate() {
        double bronze = 41.4e9 / ModulusFromRate.of(1, 0.001, 0.008, 6);
        double rate = 41.4e9 * 1 / (ModulusFromRate.of(1, 0.001, 0.008, 6));
        assertThat(rate).isEqualTo(bronze);
        Identification id = Identification.of(spring(seen(Map.of(), pushes(0.03, rate)), Optional.empty(), 0.03));
        assertThat(id.odds().ranked().get(0)).isEqualTo(Key.PHOSPHOR_BRONZE);
        assertThat(id.odds().of(Key.PHOSPHOR_BRONZE)).isGreaterThan(0.99);
        assertThat(id.modulus().orElseThrow().value()).isCloseTo(41.4e9, Percentage.withPercentage(0.1));
    }

    @Test
    void slightMagnetBrightAndNoRustIsStainlessWhateverItIsCalled() {
        Seen looks = seen(Map.of("magnet", "slight", "colour", "bright", "rust", "no"), List.of());
        Identification unnamed = Identification.of(spring(looks, Optional.empty(), 0.03));
        assertThat(unnamed.odds().ranked().get(0)).isEqualTo(Key.STAINLESS);
        Identification named = Identification.of(spring(looks, Optional.of("music wire"), 0.03));
        assertThat(named.odds().of(Key.STAINLESS)).isGreaterThan(0.3);
        assertThat(named.findings().stream().map(f -> f.what().template()))
                .anyMatch(t -> t.contains("hardly music wire"));
    }

    @Test
    void stressIsJudgedByTheWeakestPlausibleWire() {
        Seen looks = seen(Map.of("magnet", "strong"), List.of());
        Identification id = Identification.of(spring(looks, Optional.empty(), 0.03));
        CompressionSpring spring = CompressionSpring.of(id.spring(), Optional.empty(), OptionalDouble.empty());
        double borne = spring.allowable().orElseThrow().stress();
        for (Key key : id.odds().plausible()) {
            assertThat(borne)
                    .isLessThanOrEqualTo(org.strawblue.core.spring.SpringMaterial.of(key)
                            .allowable(0.001)
                            .orElseThrow()
                            .stress());
        }
        assertThat(id.odds().plausible()).contains(Key.MUSIC, Key.HARD_DRAWN);
    }

    @Test
    void oddsStaySharesOfOne() {
        MaterialOdds odds = MaterialOdds.prior()
                .given("magnet", "none")
                .given("colour", "golden")
                .given("weather", "fine")
                .given(80e9, 0.05, 0.001);
        assertThat(odds.odds().values().stream().mapToDouble(p -> p).sum()).isCloseTo(1, within(1e-12));
    }

    /** Fused errors are smaller than either; a contradiction is told and the test believed. */
    @Test
    void sizesAndTestAreWeighedTogether() {
        MeasuredSpring plain = spring(Seen.nothing(), Optional.of("music wire"), 0.03);
        double rate = Identification.of(plain).bySizes().value();
        Identification both =
                Identification.of(spring(seen(Map.of(), pushes(0.03, 1.03 * rate)), Optional.of("music wire"), 0.03));
        assertThat(both.rate().value()).isBetween(rate, 1.03 * rate);
        assertThat(both.rate().band().width())
                .isLessThan(both.bySizes().band().width())
                .isLessThan(both.byTest().orElseThrow().band().width());
        Identification torn =
                Identification.of(spring(seen(Map.of(), pushes(0.03, 1.6 * rate)), Optional.of("music wire"), 0.03));
        assertThat(torn.rate()).isEqualTo(torn.byTest().orElseThrow());
        assertThat(torn.findings().stream().map(f -> f.what().template()))
                .anyMatch(t -> t.contains("contradict each other"));
    }

    /** A rate that was weighed is what the spring has, whatever its sizes; stress still comes from force and sizes. */
    @Test
    void theWeighedRateIsCarriedIntoTheSpring() {
        MeasuredSpring known =
                Identification.resolved(spring(seen(Map.of(), pushes(0.03, 1500)), Optional.of("music wire"), 0.03));
        CompressionSpring spring = CompressionSpring.of(known, Optional.empty(), OptionalDouble.empty());
        assertThat(spring.rate().value())
                .isCloseTo(known.seen().rate().orElseThrow().value(), Percentage.withPercentage(0.1));
        double share = spring.rate().band().width() / 2 / spring.rate().value();
        assertThat(share).isLessThan(0.05);
    }

    @Test
    void tellsSetFromLengthLostAndFromStressAtSolid() {
        MeasuredSpring shrinks = spring(
                Seen.of(Map.of(), List.of(), Optional.empty(), Optional.of(0.0312)), Optional.of("music wire"), 0.030);
        assertThat(whats(shrinks)).anyMatch(t -> t.contains("still taking a set"));
        MeasuredSpring keeps = spring(
                Seen.of(Map.of(), List.of(), Optional.empty(), Optional.of(0.0301)), Optional.of("music wire"), 0.030);
        assertThat(whats(keeps)).anyMatch(t -> t.contains("keeps its length"));
        MeasuredSpring tall = spring(Seen.nothing(), Optional.of("music wire"), 0.030);
        assertThat(whats(tall)).anyMatch(t -> t.contains("take a set") || t.contains("pressed solid by its maker"));
        MeasuredSpring close = spring(Seen.nothing(), Optional.of("music wire"), 0.012);
        assertThat(whats(close)).noneMatch(t -> t.contains("set"));
    }

    private static List<String> whats(MeasuredSpring s) {
        return Identification.of(s).findings().stream()
                .map(Finding::what)
                .map(p -> p.template())
                .toList();
    }
}
