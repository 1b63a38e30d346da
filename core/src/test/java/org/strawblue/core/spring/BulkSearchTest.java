package org.strawblue.core.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The search over columns against the search that gives reasons, and against every cut tried one by one. */
class BulkSearchTest {

    private static final Pocket PLUNGER = Drawer.pocket(9.6, 4, 26, 8, new double[] {5, 10}, new double[] {12, 25});

    static List<MeasuredSpring> drawer(long seed, int n) {
        SplittableRandom random = new SplittableRandom(seed);
        List<MeasuredSpring> drawer = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double wire = random.nextDouble(0.3, 1.4);
            double mean = wire * random.nextDouble(5, 13);
            double coils = Math.round(4 * random.nextDouble(5, 40)) / 4.0;
            double free = coils * Math.min(wire * random.nextDouble(1.3, 5), 0.7 * mean) + wire;
            EndType first = EndType.values()[random.nextInt(4)];
            EndType second = random.nextInt(4) == 0 ? EndType.values()[random.nextInt(4)] : first;
            drawer.add(new MeasuredSpring(
                    "s" + i,
                    i + 1,
                    wire / 1000,
                    (mean + wire) / 1000,
                    free / 1000,
                    coils,
                    random.nextInt(6) == 0 ? Optional.empty() : Optional.of(new Ends(first, second)),
                    Optional.of(SpringMaterial.all().get(random.nextInt(6)).name()),
                    MeasurementErrors.usual(),
                    1));
        }
        return drawer;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void findsWhatTheSearchWithReasonsFinds(long seed) {
        List<MeasuredSpring> drawer = drawer(seed, 400);
        BulkResult bulk = BulkSearch.search(PLUNGER, SpringColumns.of(drawer));
        Map<MeasuredSpring, SpringVerdict> verdicts = new IdentityHashMap<>();
        SpringSearch.rank(PLUNGER, drawer).forEach(v -> verdicts.put(v.spring().spring(), v));
        for (int i = 0; i < drawer.size(); i++) {
            SpringVerdict verdict = verdicts.get(drawer.get(i));
            assertThat(bulk.works(i)).as("spring %s", i).isEqualTo(verdict.works());
            if (verdict.works()) {
                assertThat(bulk.removed(i))
                        .isEqualTo(verdict.spring().cut().map(Cut::removed).orElse(0.0));
                assertThat(bulk.probability(i)).isCloseTo(verdict.probability(), within(0.001));
            }
        }
        assertThat(bulk.working()).isBetween(5, 200);
    }

    /** A spring works if and only if some cut of the whole list keeps every margin. */
    @ParameterizedTest
    @ValueSource(longs = {4, 5})
    void losesNoCutThatWorks(long seed) {
        List<MeasuredSpring> drawer = drawer(seed, 300);
        BulkResult bulk = BulkSearch.search(PLUNGER, SpringColumns.of(drawer));
        for (int i = 0; i < drawer.size(); i++) {
            CompressionSpring whole = CompressionSpring.of(drawer.get(i), Optional.empty(), PLUNGER.temperature());
            if (whole.allowable().isEmpty()
                    || whole.nominal().pitch() < whole.nominal().wire()) {
                assertThat(bulk.ruledOut(i)).isTrue();
                continue;
            }
            Duty duty = Duty.of(PLUNGER, whole.moduli(), whole.allowable().get());
            boolean any = Margins.of(whole.nominal(), duty).kept()
                    || Cuts.of(whole.nominal()).stream()
                            .anyMatch(c -> Margins.of(whole.inputs().nominal(Optional.of(c)), duty)
                                    .kept());
            assertThat(bulk.works(i)).as("spring %s", i).isEqualTo(any);
        }
    }

    @Test
    void namesALimitThatIsBrokenIndeed() {
        List<MeasuredSpring> drawer = drawer(6, 300);
        BulkResult bulk = BulkSearch.search(PLUNGER, SpringColumns.of(drawer));
        int named = 0;
        for (int i = 0; i < drawer.size(); i++) {
            Optional<Limit> broken = bulk.broken(i);
            if (broken.isPresent()) {
                CompressionSpring whole = CompressionSpring.of(drawer.get(i), Optional.empty(), PLUNGER.temperature());
                Duty duty = Duty.of(PLUNGER, whole.moduli(), whole.allowable().orElseThrow());
                assertThat(Margins.of(whole.nominal(), duty).get(broken.get())).isNegative();
                named++;
            }
        }
        assertThat(named).isGreaterThan(200);
        assertThat(IntStream.of(bulk.failuresByLimit()).sum()).isLessThanOrEqualTo(named);
    }

    @Test
    void ranksTheLikeliestFirst() {
        BulkResult bulk = BulkSearch.search(PLUNGER, SpringColumns.of(drawer(7, 2000)));
        int[] best = bulk.best(20);
        assertThat(best).hasSize(20);
        for (int k = 1; k < best.length; k++) {
            assertThat(bulk.probability(best[k])).isLessThanOrEqualTo(bulk.probability(best[k - 1]));
        }
        assertThat(bulk.best(Integer.MAX_VALUE)).hasSize(bulk.working());
    }

    /** The same strengths as the slow way, at printed sizes, between them and beyond. */
    @Test
    void bearsTheSameAsTheTables() {
        double[] into = new double[2];
        for (SpringMaterial material : SpringMaterial.all()) {
            AllowableCurve curve = AllowableCurve.of(material);
            for (double mm = 0.05; mm < 22; mm = Math.round(mm * 1000 + 13) / 1000.0) {
                Optional<AllowableStress> slow = material.allowable(mm / 1000);
                assertThat(curve.at(mm / 1000, into)).isEqualTo(slow.isPresent());
                if (slow.isPresent()) {
                    assertThat(into[0]).isCloseTo(slow.get().stress(), within(1.0));
                    assertThat(into[1]).isCloseTo(slow.get().strength(), within(1.0));
                }
            }
        }
    }
}
