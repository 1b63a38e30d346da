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
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

class ChainTest {

    private static final double INCH = 0.0254;

    private static IntStream seeds() {
        return IntStream.range(0, 25);
    }

    private static Band band(double low, double high) {
        return new Band(Dimension.LENGTH, low, high);
    }

    private static Spread normal(double mean, double sd) {
        double half = Normal.HALF_OF_80 * sd;
        return new Spread.Told(Estimate.of(Dimension.LENGTH, mean, mean - half, mean + half));
    }

    private static Chain random(SplittableRandom random) {
        List<Link> links = new ArrayList<>();
        int n = 2 + random.nextInt(5);
        for (int i = 0; i < n; i++) {
            double size = 0.001 + 0.01 * random.nextDouble();
            double half = 1e-5 + 1e-4 * random.nextDouble();
            Spread spread = switch (random.nextInt(3)) {
                case 0 -> new Spread.Within(band(size - half, size + half));
                case 1 ->
                    new Spread.Told(
                            Estimate.of(Dimension.LENGTH, size, size - half, size + half * random.nextDouble(0.2, 3)));
                default -> Spread.Exact.length(size);
            };
            links.add(new Link("part " + i, random.nextBoolean() ? 1 : -random.nextDouble(0.3, 1.5), spread));
        }
        links.add(Link.plus("shim", new Spread.Within(band(0, 5e-5))));
        return new Chain("gap", links);
    }

    /** Textbook: shaft 1.048 in (s 0.0050), bearing 1.063 in (s 0.0025): P(interference) = Φ(−2.6833) = 0.00365. */
    @Test
    void normalSizesGiveTheTextbooksChance() {
        Chain chain = new Chain(
                "clearance",
                List.of(
                        Link.plus("bearing", normal(1.063 * INCH, 0.0025 * INCH)),
                        Link.minus("shaft", normal(1.048 * INCH, 0.0050 * INCH))));
        assertThat(1 - chain.chanceAbove(0)).isCloseTo(0.00365, within(0.00002));
        assertThat(chain.mean()).isCloseTo(0.015 * INCH, within(1e-9));
        assertThat(chain.deviation()).isCloseTo(Math.hypot(0.0025, 0.0050) * INCH, within(1e-9));
    }

    /** Guide for operators: three spacers 1.000 ±0.005 in: 0.015 in at worst; 0.00866 in by root sum square. */
    @Test
    void threeSpacers() {
        Spread spacer = new Spread.Within(band(0.995 * INCH, 1.005 * INCH));
        Chain chain =
                new Chain("stack", List.of(Link.plus("a", spacer), Link.plus("b", spacer), Link.plus("c", spacer)));
        assertThat(chain.worstCase().width() / 2).isCloseTo(0.015 * INCH, within(1e-9));
        assertThat(chain.rootSumSquare()).isCloseTo(0.00866 * INCH, within(1e-7));
    }

    /** Irwin–Hall: the sum of three uniform sizes on 0 to 1 is below 1 in one case of six. */
    @Test
    void threeUniformSizes() {
        Spread one = new Spread.Within(band(0, 1));
        Chain chain = new Chain("sum", List.of(Link.plus("a", one), Link.plus("b", one), Link.plus("c", one)));
        assertThat(1 - chain.chanceAbove(1)).isCloseTo(1.0 / 6, within(0.0005));
        assertThat(1 - chain.chanceAbove(0.5)).isCloseTo(0.125 / 6, within(0.0003));
        assertThat(chain.chanceAbove(3)).isZero();
        assertThat(chain.chanceAbove(0)).isEqualTo(1);
    }

    /** A million draws agree with the convolution within four standard errors, its own fineness added. */
    @ParameterizedTest
    @MethodSource("seeds")
    void drawsAgreeWithTheConvolution(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Chain chain = random(random);
        double x = chain.mean() + chain.deviation() * random.nextDouble(-1.5, 1.5);
        double analytic = chain.chanceAbove(x);
        Draws draws = Draws.of(List.of(new Demand(chain, band(x, Double.POSITIVE_INFINITY))), 100_000, seed);
        assertThat(draws.all()).isCloseTo(analytic, within(4 * draws.error() + 0.001));
        assertThat(draws.each()).containsExactly(draws.all());
    }

    /** No draw of bounded sizes leaves the worst case, and the 80 % interval lies inside it. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theWorstCaseHoldsEveryDraw(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Chain chain = bounded(random);
        Band worst = chain.worstCase();
        Draws inside =
                Draws.of(List.of(new Demand(chain, band(worst.low() - 1e-12, worst.high() + 1e-12))), 20_000, seed);
        assertThat(inside.all()).isEqualTo(1);
        Estimate gap = chain.estimate(List.of());
        assertThat(gap.low()).isGreaterThan(worst.low());
        assertThat(gap.high()).isLessThan(worst.high());
        assertThat(chain.rootSumSquare()).isLessThanOrEqualTo(worst.width() / 2 + 1e-15);
    }

    private static Chain bounded(SplittableRandom random) {
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            double size = 0.01 * random.nextDouble();
            links.add(new Link(
                    "part " + i,
                    random.nextBoolean() ? 1 : -1,
                    new Spread.Within(band(size, size + 1e-4 * random.nextDouble()))));
        }
        return new Chain("gap", links);
    }

    /** Wider limits make the spread wider, never the chance to miss smaller. */
    @Test
    void widerLimitsWidenTheGap() {
        double last = 0;
        for (double half = 1e-6; half < 1e-4; half *= 1.5) {
            Chain chain = new Chain(
                    "gap",
                    List.of(
                            Link.plus("a", new Spread.Within(band(0.01 - half, 0.01 + half))),
                            Link.minus("b", new Spread.Within(band(0.00998, 0.00999)))));
            Estimate gap = chain.estimate(List.of());
            assertThat(gap.high() - gap.low()).isGreaterThan(last);
            last = gap.high() - gap.low();
        }
    }

    /** The chance does not depend on the unit: all sizes and the limit in inches give the same. */
    @ParameterizedTest
    @MethodSource("seeds")
    void unitsDoNotMatter(int seed) {
        Chain metric = bounded(new SplittableRandom(seed));
        List<Link> scaled = metric.links().stream()
                .map(l -> new Link(
                        l.part(),
                        l.weight(),
                        new Spread.Within(
                                band(l.spread().low() / INCH, l.spread().high() / INCH))))
                .toList();
        double x = metric.mean() + 0.4 * metric.deviation();
        assertThat(new Chain("gap", scaled).chanceAbove(x / INCH)).isCloseTo(metric.chanceAbove(x), within(1e-9));
    }

    /** Two chains that share a part fail together: the product of their chances would be wrong. */
    @Test
    void sharedPartsAreDrawnOnce() {
        Link shared = Link.plus("pin", new Spread.Within(band(-1e-4, 1e-4)));
        Link back = Link.minus("pin", shared.spread());
        Band positive = band(0, 1);
        Demand one = new Demand(new Chain("a", List.of(shared)), positive);
        Demand other = new Demand(new Chain("b", List.of(back)), positive);
        assertThat(Draws.of(List.of(one, one), 20_000, 5).all()).isCloseTo(0.5, within(0.02));
        assertThat(Draws.of(List.of(one, other), 20_000, 5).all()).isLessThan(0.01);
        assertThat(Draws.of(List.of(one, other), 500, 5)).isEqualTo(Draws.of(List.of(one, other), 500, 5));
    }

    @Test
    void exactSizesGiveAnExactGap() {
        Chain chain = new Chain(
                "gap", List.of(Link.plus("a", Spread.Exact.length(0.01)), Link.minus("b", Spread.Exact.length(0.004))));
        assertThat(chain.estimate(List.of()).value()).isCloseTo(0.006, within(1e-12));
        assertThat(chain.chanceAbove(0.005)).isEqualTo(1);
        assertThat(chain.chanceAbove(0.007)).isZero();
    }
}
