package org.strawblue.core.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;

class GrowthLearningTest {

    private static final Grade O1 = Grades.find("O1").value().orElseThrow();
    private static final Grade W1 = Grades.find("W1").value().orElseThrow();

    private static Estimate reading(double metres, double half) {
        return Estimate.of(Dimension.LENGTH, metres, metres - half, metres + half);
    }

    private static LoggedGrowth grew(Grade grade, Feature.Kind kind, double share, double half) {
        double size = 0.02;
        return new LoggedGrowth(grade, kind, reading(size, half), reading(size * (1 + share), half));
    }

    private static Estimate share(Grade grade, List<LoggedGrowth> log) {
        return GrowthLearning.share(grade, Feature.Kind.OUTSIDE, log).value().orElseThrow();
    }

    private static double width(Estimate e) {
        return e.high() - e.low();
    }

    @Test
    void withoutALogItIsWhatIsKnownOfTheSteel() {
        assertThat(share(O1, List.of())).isEqualTo(SizeChange.share(Feature.Kind.OUTSIDE, SizeChange.asQuenched(O1)));
    }

    /** More parts of the same steel narrow the interval, and it goes where they went. */
    @Test
    void earlierPartsNarrowAndShift() {
        List<LoggedGrowth> log = new ArrayList<>();
        double last = width(share(O1, log));
        for (int i = 0; i < 6; i++) {
            log.add(grew(O1, Feature.Kind.OUTSIDE, 0.0006, 1e-6));
            Estimate now = share(O1, log);
            assertThat(width(now)).isLessThan(last);
            last = width(now);
        }
        assertThat(share(O1, log).value()).isCloseTo(0.0006, within(0.0001));
    }

    /** Another steel's parts tell of the shop, but less than the same steel's. */
    @Test
    void otherSteelsTellLess() {
        double prior = width(share(O1, List.of()));
        double other = width(share(O1, List.of(grew(W1, Feature.Kind.OUTSIDE, 0.0015, 1e-6))));
        double same = width(share(O1, List.of(grew(O1, Feature.Kind.OUTSIDE, 0.001, 1e-6))));
        assertThat(other).isLessThan(prior);
        assertThat(same).isLessThan(other);
    }

    @Test
    void aPoorReadingTellsLess() {
        double good = width(share(O1, List.of(grew(O1, Feature.Kind.OUTSIDE, 0.001, 1e-6))));
        double poor = width(share(O1, List.of(grew(O1, Feature.Kind.OUTSIDE, 0.001, 2e-5))));
        assertThat(poor).isGreaterThan(good);
        assertThat(poor).isLessThan(width(share(O1, List.of())));
    }

    /** Holes and outsides do not learn from each other; a figure no steel can show is left out and said. */
    @Test
    void onlyWhatBelongsIsLearnedFrom() {
        Estimate prior = share(O1, List.of());
        assertThat(share(O1, List.of(grew(O1, Feature.Kind.BORE, -0.0003, 1e-6))))
                .isEqualTo(prior);
        Answer<Estimate> typo =
                GrowthLearning.share(O1, Feature.Kind.OUTSIDE, List.of(grew(O1, Feature.Kind.OUTSIDE, 0.016, 1e-6)));
        assertThat(typo.value()).contains(prior);
        assertThat(typo.findings()).hasSize(1);
        Estimate hole = GrowthLearning.share(O1, Feature.Kind.BORE, List.of(grew(O1, Feature.Kind.BORE, -0.0003, 1e-6)))
                .value()
                .orElseThrow();
        assertThat(hole.value()).isLessThan(0.0003);
    }

    private static IntStream shops() {
        return IntStream.of(0);
    }

    /**
     * Shops drawn from the model itself: the interval of the next part holds it in four cases of five, whatever the number of
     * earlier ones.
     */
    @ParameterizedTest
    @MethodSource("shops")
    void theIntervalHoldsFourOfFive(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Estimate prior = share(O1, List.of());
        double sd = width(prior) / 2 / Normal.HALF_OF_80;
        int held = 0;
        int shops = 1500;
        for (int i = 0; i < shops; i++) {
            double w = new double[] {0.15, 0.35, 0.7}[random.nextInt(3)];
            double bar = prior.value() + sd * Math.sqrt(1 - w) * Normal.quantile(random.nextDouble(1e-9, 1));
            List<LoggedGrowth> log = new ArrayList<>();
            int n = 1 + random.nextInt(5);
            for (int k = 0; k < n; k++) {
                log.add(grew(O1, Feature.Kind.OUTSIDE, part(bar, sd, w, random), 1e-9));
            }
            Estimate told = share(O1, log);
            held += told.band().contains(part(bar, sd, w, random)) ? 1 : 0;
        }
        assertThat((double) held / shops).isBetween(0.765, 0.835);
    }

    private static double part(double bar, double sd, double w, SplittableRandom random) {
        return bar + sd * Math.sqrt(w) * Normal.quantile(random.nextDouble(1e-9, 1));
    }

    @Test
    void unfinishedRoundsAreLessRoundTheLargerTheyAre() {
        Estimate small = Roundness.likely(Feature.Kind.OUTSIDE, 0.005);
        Estimate large = Roundness.likely(Feature.Kind.BORE, 0.05);
        assertThat(small.value()).isLessThan(large.value());
        assertThat(small.weak()).isTrue();
        assertThat(Roundness.findings(Feature.Kind.BORE)).isNotEqualTo(Roundness.findings(Feature.Kind.OUTSIDE));
    }
}
