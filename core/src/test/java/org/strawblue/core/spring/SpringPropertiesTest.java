package org.strawblue.core.spring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for every spring; 60 of them drawn from one seed. */
class SpringPropertiesTest {

    private static final Moduli STEEL = new Moduli(206e9, 81.5e9);
    private static final StressFactor FACTOR = new Bergstraesser();
    private static final Percentage HAIR = Percentage.withPercentage(1e-6);

    static Stream<Coil> coils() {
        SplittableRandom random = new SplittableRandom(1);
        return Stream.generate(() -> coil(random)).limit(60);
    }

    private static Coil coil(SplittableRandom random) {
        double wire = random.nextDouble(0.0003, 0.004);
        double mean = wire * random.nextDouble(4, 14);
        double total = random.nextDouble(5, 30);
        Ends ends = new Ends(any(random), any(random));
        double pitch = Math.min(wire * random.nextDouble(1.3, 4), 0.7 * mean);
        double free = pitch * (total - ends.inactive() + ends.lengthPitches()) + ends.lengthWires() * wire;
        return Coil.of(wire, mean + wire, free, total, ends);
    }

    private static EndType any(SplittableRandom random) {
        return EndType.values()[random.nextInt(EndType.values().length)];
    }

    /** The gap of each coil stays, so each coil is strained to solid as before. An open end alone changes it a little. */
    @ParameterizedTest
    @MethodSource("coils")
    void cuttingNeverRaisesTheStrainOfACoilAtSolid(Coil coil) {
        double before = gapPerCoil(coil);
        for (Cut cut : Cuts.of(coil)) {
            Coil after = cut.of(coil);
            assertThat(after.pitch()).isCloseTo(coil.pitch(), HAIR);
            assertThat(after.free()).isLessThan(coil.free());
            assertThat(gapPerCoil(after))
                    .isLessThanOrEqualTo(Math.max(before, coil.pitch() - coil.wire()) * (1 + 1e-9));
        }
    }

    /** What one coil of the body closes up by, from free to solid. */
    private static double gapPerCoil(Coil coil) {
        return coil.pitch() - coil.wire();
    }

    /** Same kind of end after the cut as before: the very same stress at solid. */
    @ParameterizedTest
    @MethodSource("coils")
    void cuttingToTheSameEndKeepsTheStressAtSolid(Coil coil) {
        for (Cut cut : Cuts.of(coil)) {
            if (!cut.atFirst() && cut.newEnd() == coil.ends().second()) {
                assertThat(solidStressPerGap(cut.of(coil))).isCloseTo(solidStressPerGap(coil), HAIR);
            }
        }
    }

    private static double solidStressPerGap(Coil coil) {
        double force = new ClassicalRate().rate(STEEL, coil.wire(), coil.mean(), coil.active(), 0)
                * coil.active()
                * gapPerCoil(coil);
        return FACTOR.stress(force, coil.mean(), coil.wire());
    }

    @ParameterizedTest
    @MethodSource("coils")
    void fewerCoilsAreStiffer(Coil coil) {
        double rate = coil.rate(STEEL);
        for (Cut cut : Cuts.of(coil)) {
            Coil after = cut.of(coil);
            if (after.active() < coil.active()) {
                assertThat(after.rate(STEEL)).isGreaterThan(rate);
            }
        }
    }

    /** Which is why no cut mends a spring that is too soft for its pocket. Few coils aside, whose surplus is not here. */
    @ParameterizedTest
    @MethodSource("coils")
    void cuttingNeverRaisesTheForceAtAGivenLength(Coil coil) {
        double length = (coil.free() + coil.solid()) / 2;
        double force = coil.force(STEEL, length);
        for (Cut cut : Cuts.of(coil)) {
            Coil after = cut.of(coil);
            if (after.solid() < length) {
                assertThat(after.force(STEEL, length)).isLessThanOrEqualTo(force * (1 + 1e-9));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("coils")
    void theCoilGrowsSteadilyAsItIsPressed(Coil coil) {
        for (CoilGrowth law : new CoilGrowth[] {new EndsHeld(), new EndsFree()}) {
            double last = coil.outside();
            for (int i = 1; i <= 10; i++) {
                double length = coil.free() + (coil.solid() - coil.free()) * i / 10;
                double outside = coil.outsideAt(STEEL, law, length);
                assertThat(outside).isGreaterThanOrEqualTo(last);
                last = outside;
            }
        }
    }

    @ParameterizedTest
    @MethodSource("coils")
    void freeEndsLetItGrowMoreThanHeldOnes(Coil coil) {
        double held = coil.outsideAt(STEEL, new EndsHeld(), coil.solid());
        double free = coil.outsideAt(STEEL, new EndsFree(), coil.solid());
        assertThat(free).isGreaterThan(held);
        assertThat(CompressionSpring.widestOutside(coil, STEEL, coil.solid())).isGreaterThan(free);
    }

    /** Twice the size all over: rate twice, force four times, stress the same, surge half. */
    @ParameterizedTest
    @MethodSource("coils")
    void scalesAsElasticityDemands(Coil coil) {
        Coil big = new Coil(2 * coil.wire(), 2 * coil.outside(), 2 * coil.free(), coil.total(), coil.ends(), 1);
        double at = (coil.free() + coil.solid()) / 2;
        assertThat(big.rate(STEEL)).isCloseTo(2 * coil.rate(STEEL), HAIR);
        assertThat(big.force(STEEL, 2 * at)).isCloseTo(4 * coil.force(STEEL, at), HAIR);
        assertThat(big.stress(STEEL, FACTOR, 2 * at)).isCloseTo(coil.stress(STEEL, FACTOR, at), HAIR);
        assertThat(big.outsideAt(STEEL, new EndsFree(), 2 * at))
                .isCloseTo(2 * coil.outsideAt(STEEL, new EndsFree(), at), HAIR);
        assertThat(big.leastGap(false)).isCloseTo(2 * coil.leastGap(false), HAIR);
    }

    /** The closed form for the longest stable spring against the formula it was solved from. */
    @ParameterizedTest
    @MethodSource("coils")
    void theLongestStableSpringIsJustStable(Coil coil) {
        for (Seating seating : Seating.values()) {
            double pressed = coil.free() / 2;
            double longest = Buckling.longestFree(STEEL, coil.mean(), pressed, seating);
            assertThat(bows(coil.mean(), longest * 0.999, pressed, seating)).isFalse();
            assertThat(bows(coil.mean(), longest * 1.001, pressed, seating)).isTrue();
        }
    }

    private static boolean bows(double mean, double free, double pressed, Seating seating) {
        OptionalDouble critical = Buckling.criticalDeflection(STEEL, mean, free, seating);
        return critical.isPresent() && critical.getAsDouble() < free - pressed;
    }

    /** Inches or millimetres, it is the same spring: the sizes below are exact in both. */
    @ParameterizedTest
    @MethodSource("coils")
    void theUnitItWasMeasuredInDoesNotMatter(Coil coil) {
        MeasuredSpring metric = measured(coil, coil.wire(), coil.outside(), coil.free());
        double inch = 0.0254;
        MeasuredSpring imperial =
                measured(coil, coil.wire() / inch * inch, coil.outside() / inch * inch, coil.free() / inch * inch);
        CompressionSpring a = CompressionSpring.of(metric, Optional.empty(), OptionalDouble.empty());
        CompressionSpring b = CompressionSpring.of(imperial, Optional.empty(), OptionalDouble.empty());
        assertThat(b.rate().value()).isCloseTo(a.rate().value(), HAIR);
        assertThat(b.rate().low()).isCloseTo(a.rate().low(), Percentage.withPercentage(0.1));
    }

    private static MeasuredSpring measured(Coil coil, double wire, double outside, double free) {
        return new MeasuredSpring(
                "s",
                1,
                wire,
                outside,
                free,
                coil.total(),
                Optional.of(coil.ends()),
                Optional.of("music wire"),
                MeasurementErrors.usual(),
                1);
    }
}
