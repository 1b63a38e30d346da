package org.strawblue.core.spring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Quantity;

/** Each trap a drawer sets is named; what is said to work breaks no limit. */
class SpringSearchTest {

    private static final Pocket PLUNGER = Drawer.pocket(9.6, 4, 26, 8, new double[] {5, 10}, new double[] {12, 25});

    private static SpringVerdict judge(Pocket pocket, MeasuredSpring spring) {
        return SpringSearch.rank(pocket, List.of(spring)).get(0);
    }

    private static List<String> failures(Pocket pocket, MeasuredSpring spring) {
        return judge(pocket, spring).failures().stream()
                .map(p -> p.write(SpringSearchTest::plain))
                .toList();
    }

    private static String plain(Amount amount) {
        return amount instanceof Quantity q ? String.valueOf(q.si()) : ((Band) amount).low() + "–";
    }

    private static void fails(Pocket pocket, MeasuredSpring spring, String reason) {
        assertThat(failures(pocket, spring)).anyMatch(f -> f.contains(reason));
        assertThat(judge(pocket, spring).works()).isFalse();
    }

    private static MeasuredSpring music(double wire, double outside, double free, double coils) {
        return Drawer.spring("s", wire, outside, free, coils, EndType.CLOSED_GROUND, "music wire");
    }

    @Test
    void findsTheSpringThatWorksAsItIs() {
        SpringVerdict verdict = judge(PLUNGER, music(0.8, 7.4, 31, 10.5));
        assertThat(verdict.works()).isTrue();
        assertThat(verdict.spring().cut()).isEmpty();
        assertThat(verdict.probability()).isGreaterThan(0.9);
    }

    @Test
    void cutsTheOneThatIsTooLong() {
        SpringVerdict verdict = judge(PLUNGER, music(0.6, 6.2, 120, 42));
        assertThat(verdict.works()).isTrue();
        assertThat(verdict.spring().cut().orElseThrow().removed()).isBetween(20.0, 30.0);
        assertThat(verdict.spring().nominal().free()).isBetween(0.03, 0.045);
    }

    @Test
    void namesTheOneThatBindsOnlyWhenPressed() {
        Pocket tight = Drawer.pocket(7.43, 0, 26, 8, new double[] {}, new double[] {});
        fails(tight, music(0.8, 7.4, 32, 9), "binds: grows to");
    }

    @Test
    void namesTheOneThatDoesNotGoInAtAll() {
        fails(PLUNGER, music(1, 12, 42, 8), "does not go into the bore");
    }

    @Test
    void namesTheOneTooNarrowForTheRod() {
        fails(PLUNGER, music(0.7, 5.2, 36, 18), "will not go over the rod");
    }

    @Test
    void namesTheOneThatTakesASet() {
        Pocket wide = Drawer.pocket(0, 4, 26, 16, new double[] {}, new double[] {});
        fails(wide, Drawer.spring("s", 0.8, 7.2, 34, 9, EndType.CLOSED_GROUND, "phosphor bronze"), "takes a set");
    }

    @Test
    void namesTheOneThatGoesSolid() {
        Pocket deep = Drawer.pocket(9.6, 0, 26, 18, new double[] {}, new double[] {});
        fails(deep, music(1, 9, 27, 11), "solid before full travel");
    }

    @Test
    void namesTheOneThatIsTooShort() {
        fails(PLUNGER, music(0.9, 7.6, 12, 6), "slack at rest");
    }

    @Test
    void namesTheOneTooSoftCutOrNot() {
        Pocket strong = Drawer.pocket(9.6, 0, 26, 4, new double[] {30, 40}, new double[] {});
        fails(strong, music(0.4, 5, 40, 16), "at rest, and softer still if cut");
    }

    @Test
    void namesTheOneThatBuckles() {
        Pocket open = Drawer.pocket(20, 0, 60, 25, new double[] {}, new double[] {});
        fails(open, Drawer.spring("s", 0.8, 6, 62, 25, EndType.CLOSED_GROUND, "music wire"), "buckles");
    }

    @Test
    void aCloseBoreHoldsASlimSpringStraight() {
        Pocket guided = Drawer.pocket(6.6, 0, 60, 20, new double[] {}, new double[] {});
        SpringVerdict verdict = judge(guided, music(0.8, 6, 62, 25));
        assertThat(verdict.works()).isTrue();
        assertThat(verdict.cautions()).anyMatch(f -> f.what().template().contains("leans on its guide"));
    }

    @Test
    void namesTheOneThatTires() {
        Pocket busy = new Pocket(
                "busy",
                OptionalDouble.empty(),
                OptionalDouble.of(0.004),
                0.026,
                0.012,
                Optional.empty(),
                Optional.empty(),
                Optional.of(Seating.BOTH_FLAT),
                OptionalDouble.of(1e6),
                OptionalDouble.empty());
        fails(busy, music(0.8, 6.4, 30, 10), "tires");
    }

    @Test
    void namesTheOneThatHeatSlackens() {
        Pocket hot = new Pocket(
                "hot",
                OptionalDouble.of(0.0096),
                OptionalDouble.empty(),
                0.026,
                0.008,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(273.15 + 200));
        fails(hot, music(0.8, 7.4, 32, 11), "goes slack with heat");
        assertThat(judge(hot, Drawer.spring("s", 0.8, 7.4, 32, 11, EndType.CLOSED_GROUND, "stainless"))
                        .failures())
                .noneMatch(p -> p.template().contains("heat"));
    }

    @Test
    void namesFiguresThatDisagree() {
        fails(PLUNGER, music(1, 9, 9.5, 12), "the figures disagree");
    }

    @Test
    void saysWhenNoStrengthIsKnown() {
        fails(
                PLUNGER,
                Drawer.spring("s", 0.15, 6, 30, 20, EndType.CLOSED, "hard drawn"),
                "no strength is known for hard-drawn wire");
    }

    @Test
    void cautionsTravelWithTheVerdict() {
        Pocket loose = Drawer.pocket(12, 0, 26, 2, new double[] {}, new double[] {});
        SpringVerdict few = judge(loose, Drawer.spring("s", 1, 9, 27, 5, EndType.CLOSED_GROUND, "who knows"));
        assertThat(few.cautions().stream().map(f -> f.what().template()))
                .anyMatch(t -> t.contains("coils work"))
                .anyMatch(t -> t.contains("nobody knows"));
    }

    /** Every verdict "works" is checked again, limit by limit, against formulas in their plainest form. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void nothingSaidToWorkBreaksALimit(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<MeasuredSpring> drawer = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double wire = random.nextDouble(0.4, 1.6);
            drawer.add(Drawer.spring(
                    "s" + i,
                    wire,
                    wire * random.nextDouble(6, 13),
                    random.nextDouble(15, 80),
                    random.nextDouble(5, 20),
                    EndType.values()[random.nextInt(4)],
                    random.nextBoolean() ? "music wire" : "stainless"));
        }
        double low = random.nextDouble(1, 10);
        Pocket pocket = Drawer.pocket(
                random.nextDouble(8, 14), 0, 26, 8, new double[] {low, 3 * low}, new double[] {low, 9 * low});
        List<SpringVerdict> ranked = SpringSearch.rank(pocket, drawer);
        assertThat(ranked).hasSize(drawer.size());
        ranked.stream().filter(SpringVerdict::works).forEach(v -> breaksNothing(v, pocket));
        assertThat(ranked.stream().map(SpringVerdict::works)).isSortedAccordingTo((a, b) -> Boolean.compare(b, a));
        assertThat(ranked.stream().filter(SpringVerdict::works).map(v -> Math.round(100 * v.probability())))
                .isSortedAccordingTo((a, b) -> Long.compare(b, a));
        assertThat(ranked).allMatch(v -> v.probability() >= 0 && v.probability() <= 1);
        assertThat(ranked).allMatch(v -> v.works() == v.failures().isEmpty());
    }

    private static void breaksNothing(SpringVerdict verdict, Pocket pocket) {
        Coil coil = verdict.spring().nominal();
        Moduli moduli = verdict.spring().moduli();
        double rest = coil.rate(moduli) * (coil.free() - pocket.lengthAtRest());
        double full = coil.rate(moduli) * (coil.free() - pocket.lengthAtFullTravel());
        assertThat(pocket.forceAtRest().orElseThrow().contains(rest)).isTrue();
        assertThat(pocket.forceAtFullTravel().orElseThrow().contains(full)).isTrue();
        assertThat(coil.solid()).isLessThan(pocket.lengthAtFullTravel());
        assertThat(coil.outsideAt(moduli, new EndsFree(), pocket.lengthAtFullTravel()))
                .isLessThan(pocket.bore().orElseThrow());
        assertThat(new Bergstraesser().stress(full, coil.mean(), coil.wire()))
                .isLessThanOrEqualTo(verdict.spring().allowable().orElseThrow().stress());
    }
}
