package org.strawblue.core.spring.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.Hand;
import org.strawblue.core.spring.MeasuredInputs;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.MeasurementErrors;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.Seating;
import org.strawblue.core.spring.Seen;
import org.strawblue.core.spring.SpringMaterial;
import org.strawblue.core.spring.SpringSearch;

/** Everything that is said to work keeps every limit when reckoned again in the plainest way; changes help, and no less does. */
class FinderTest {

    private static final Pocket POCKET = pocket(9.6, 4, 26, 8, 5, 10, 12, 25);

    private static Pocket pocket(
            double bore, double rod, double rest, double travel, double r0, double r1, double f0, double f1) {
        return new Pocket(
                "pocket",
                OptionalDouble.of(bore / 1000),
                OptionalDouble.of(rod / 1000),
                rest / 1000,
                travel / 1000,
                Optional.of(new Band(Dimension.FORCE, r0, r1)),
                Optional.of(new Band(Dimension.FORCE, f0, f1)),
                Optional.of(Seating.BOTH_FLAT),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static MeasuredSpring spring(
            String name, double wire, double outside, double free, double coils, Hand hand) {
        return new MeasuredSpring(
                name,
                1,
                wire / 1000,
                outside / 1000,
                free / 1000,
                coils,
                Optional.of(Ends.both(EndType.CLOSED_GROUND)),
                Optional.of("music wire"),
                MeasurementErrors.usual(),
                2,
                Seen.of(Map.of(), List.of(), Optional.ofNullable(hand), Optional.empty()));
    }

    private static List<MeasuredSpring> drawer(long seed, int n) {
        SplittableRandom random = new SplittableRandom(seed);
        List<MeasuredSpring> drawer = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double wire = random.nextDouble(0.4, 1.2);
            double coils = Math.round(random.nextDouble(5, 18) * 4) / 4.0;
            drawer.add(spring(
                    "s" + i,
                    wire,
                    wire * random.nextDouble(6, 13),
                    coils * wire * random.nextDouble(1.4, 4),
                    coils,
                    random.nextBoolean() ? Hand.LEFT : Hand.RIGHT));
        }
        return drawer;
    }

    private static List<Candidate> kind(Found found, Candidate.Kind kind) {
        return found.ranked().stream().filter(c -> c.kind() == kind).toList();
    }

    @Test
    void nestsOppositeHandsAndNamesTheWrongOnes() {
        Found found = Finder.find(
                POCKET,
                List.of(
                        spring("outer", 0.75, 9.1, 31, 8.5, Hand.RIGHT),
                        spring("left", 0.5, 6.2, 31, 10, Hand.LEFT),
                        spring("right", 0.5, 6.2, 31, 10, Hand.RIGHT),
                        spring("unmarked", 0.5, 6.2, 31, 10, null)));
        List<Candidate> nests = kind(found, Candidate.Kind.NESTED);
        assertThat(nests.stream().filter(Candidate::works).map(Candidate::name))
                .contains("outer + left", "outer + unmarked");
        Candidate wrong = nests.stream().filter(c -> !c.works()).findFirst().orElseThrow();
        assertThat(wrong.name()).isEqualTo("outer + right");
        assertThat(wrong.failures().get(0).template()).startsWith("wrong hand");
        assertThat(nests.stream()
                        .filter(c -> c.name().equals("outer + unmarked"))
                        .flatMap(c -> c.cautions().stream())
                        .map(f -> f.what().template()))
                .contains("Nest only springs of opposite hand.");
    }

    @Test
    void stacksTwoShortOnesAndShimsASlackOne() {
        Found found = Finder.find(
                POCKET, List.of(spring("stub", 0.8, 8.0, 16, 6, null), spring("short", 0.8, 7.4, 25, 8.5, null)));
        assertThat(kind(found, Candidate.Kind.STACKED).stream().map(Candidate::name))
                .contains("stub + stub");
        Candidate shim = kind(found, Candidate.Kind.SHIMMED).get(0);
        assertThat(shim.name()).isEqualTo("short");
        assertThat(shim.works()).isTrue();
        assertThat(found.anyInDrawer()).isTrue();
        assertThat(found.changes()).isEmpty();
    }

    /** Forces, solid length, set and room of every pair, reckoned again from the bare coils. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void noPairOrShimThatWorksBreaksALimit(long seed) {
        Found found = Finder.find(POCKET, drawer(seed, 24));
        for (Candidate c : found.ranked()) {
            assertThat(c.probability()).isBetween(0.0, 1.0);
            if (c.works() && c.kind() == Candidate.Kind.NESTED) {
                nestKeeps(coil(c.springs().get(0)), coil(c.springs().get(1)));
            } else if (c.works() && c.kind() == Candidate.Kind.STACKED) {
                stackKeeps(coil(c.springs().get(0)), coil(c.springs().get(1)));
            }
        }
        List<Candidate> ranked = found.ranked();
        for (int i = 1; i < ranked.size(); i++) {
            assertThat(!ranked.get(i - 1).works() && ranked.get(i).works()).isFalse();
        }
    }

    private static Coil coil(MeasuredSpring s) {
        return CompressionSpring.of(s, Optional.empty(), OptionalDouble.empty()).nominal();
    }

    private static double rate(Coil c) {
        return c.rate(
                SpringMaterial.of(SpringMaterial.Key.MUSIC).stiffness(c.wire()).moduli());
    }

    private static double borne(Coil c) {
        return SpringMaterial.of(SpringMaterial.Key.MUSIC)
                .allowable(c.wire())
                .orElseThrow()
                .stress();
    }

    private static double stress(Coil c, double force) {
        return CompressionSpring.STRESS_FACTOR.stress(force, c.mean(), c.wire());
    }

    private static void nestKeeps(Coil a, Coil b) {
        double fullA = rate(a) * Math.max(0, a.free() - 0.018);
        double fullB = rate(b) * Math.max(0, b.free() - 0.018);
        double rest = rate(a) * Math.max(0, a.free() - 0.026) + rate(b) * Math.max(0, b.free() - 0.026);
        assertThat(rest).isBetween(5.0, 10.0);
        assertThat(fullA + fullB).isBetween(12.0, 25.0);
        assertThat(Math.max(a.solid(), b.solid())).isLessThan(0.018);
        assertThat(stress(a, fullA)).isLessThanOrEqualTo(borne(a));
        assertThat(stress(b, fullB)).isLessThanOrEqualTo(borne(b));
        assertThat(b.outside()).isLessThan(a.inside());
        assertThat(b.inside()).isGreaterThanOrEqualTo(0.004);
    }

    private static void stackKeeps(Coil a, Coil b) {
        double free = a.free() + b.free() + 0.0005;
        double k = 1 / (1 / rate(a) + 1 / rate(b));
        double full = k * (free - 0.018);
        assertThat(k * (free - 0.026)).isBetween(5.0, 10.0);
        assertThat(full).isBetween(12.0, 25.0);
        assertThat(stress(a, full)).isLessThanOrEqualTo(borne(a));
        assertThat(stress(b, full)).isLessThanOrEqualTo(borne(b));
        assertThat(a.free() - full / rate(a)).isGreaterThan(a.solid());
        assertThat(b.free() - full / rate(b)).isGreaterThan(b.solid());
    }

    /** Even points against 100,000 random draws of both springs. */
    @Test
    void thePairsChanceAgreesWithPlainChance() {
        Member outer =
                Member.of(spring("outer", 0.75, 9.1, 30.4, 8.5, null), POCKET).orElseThrow();
        Member inner =
                Member.of(spring("inner", 0.5, 6.2, 30.4, 10, null), POCKET).orElseThrow();
        Pair pair = new NestedPair(outer, inner);
        SplittableRandom random = new SplittableRandom(5);
        int kept = 0;
        int draws = 100_000;
        for (int i = 0; i < draws; i++) {
            double[] z = random.doubles(2L * MeasuredInputs.COUNT)
                    .map(Normal::quantile)
                    .toArray();
            kept += pair.worst(
                                    outer.spring().inputs().sampled(z, 0),
                                    inner.spring().inputs().sampled(z, MeasuredInputs.COUNT))
                            >= 0
                    ? 1
                    : 0;
        }
        assertThat(PairChance.of(pair)).isCloseTo((double) kept / draws, within(0.01));
    }

    /** A change makes a spring work; nine tenths of it does not. */
    @Test
    void theSmallestChangeIsToldAndIsTheSmallest() {
        List<MeasuredSpring> drawer = List.of(spring("soft", 0.75, 9.1, 30, 8.5, null));
        List<MeasuredSpring> single = List.of(new MeasuredSpring(
                "soft",
                1,
                0.00075,
                0.0091,
                0.030,
                8.5,
                drawer.get(0).ends(),
                drawer.get(0).material(),
                MeasurementErrors.usual(),
                1));
        Pocket narrow = POCKET;
        List<Change> changes = Changes.of(narrow, single);
        assertThat(changes).isNotEmpty();
        double last = 0;
        for (Change change : changes) {
            assertThat(change.share()).isGreaterThanOrEqualTo(last);
            assertThat(SpringSearch.firstThatWorks(change.changed(), single)).isPresent();
            last = change.share();
        }
        for (Knob knob : Knob.values()) {
            Optional<Change> its = changes.stream()
                    .filter(c -> knob.turned(narrow, c.share())
                            .filter(c.changed()::equals)
                            .isPresent())
                    .findFirst();
            its.ifPresent(c -> assertThat(
                            knob.turned(narrow, 0.9 * c.share()).flatMap(p -> SpringSearch.firstThatWorks(p, single)))
                    .isEmpty());
        }
    }

    /** What a pocket cannot do is told before any spring is looked at. */
    @Test
    void anImpossiblePocketIsNotSearched() {
        Found found = Finder.find(pocket(6.5, 4, 26, 12, 12, 14, 20, 25), drawer(1, 5));
        assertThat(found.ranked()).isEmpty();
        assertThat(found.pocket()).isNotEmpty();
        assertThat(found.anyInDrawer()).isFalse();
    }

    /** Designs for winding keep every limit and are of trade wire. */
    @Test
    void springsToBeWoundWork() {
        List<Candidate> wound = WoundDesigns.of(POCKET, 3);
        assertThat(wound).hasSize(3);
        for (Candidate c : wound) {
            assertThat(org.strawblue.core.spring.TradeWire.sizes())
                    .contains(c.springs().get(0).wire());
            CompressionSpring made = CompressionSpring.of(c.springs().get(0), Optional.empty(), OptionalDouble.empty());
            assertThat(SpringSearch.worksAsItIs(made, POCKET)).isTrue();
        }
    }

    @Test
    void aVeryLargeDrawerIsSearchedInBulkFirst() {
        List<MeasuredSpring> many = drawer(9, 600);
        Found found = Finder.find(POCKET, many);
        assertThat(found.passedOver()).isGreaterThan(300);
        assertThat(found.ranked().get(0).works()).isTrue();
    }
}
