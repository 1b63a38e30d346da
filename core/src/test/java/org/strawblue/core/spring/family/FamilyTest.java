package org.strawblue.core.spring.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.Moduli;

/** What statics and elasticity demand of every family; the published figures are among the cases. */
class FamilyTest {

    private static final Moduli STEEL = new Moduli(206e9, 81.5e9);
    private static final Percentage HAIR = Percentage.withPercentage(1e-6);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    private static HelicalSpring helical(SplittableRandom random) {
        double wire = random.nextDouble(0.0004, 0.003);
        double mean = wire * random.nextDouble(5, 12);
        double coils = random.nextDouble(5, 15);
        Ends ends = Ends.both(EndType.CLOSED_GROUND);
        double pitch = wire * random.nextDouble(1.4, 3);
        Coil coil = Coil.of(wire, mean + wire, pitch * (coils - 2) + 2 * wire, coils, ends);
        return new HelicalSpring(coil, STEEL);
    }

    private static HelicalSpring longer(HelicalSpring s, double by) {
        Coil c = s.coil();
        return new HelicalSpring(new Coil(c.wire(), c.outside(), c.free() + by, c.total(), c.ends(), 1), s.moduli());
    }

    /** A nest carries what its two carry; each share is a straight line from where that one is reached. */
    @ParameterizedTest
    @MethodSource("seeds")
    void nestedForcesAdd(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        HelicalSpring outer = helical(random);
        HelicalSpring inner = longer(helical(random), random.nextDouble(-0.002, 0.002));
        Nest nest = Nest.of(outer, inner);
        double s = random.nextDouble(0.002, 0.01);
        double sum = outer.force(nest.outerDeflection(s)) + inner.force(nest.innerDeflection(s));
        assertThat(nest.force(s)).isCloseTo(sum, HAIR);
        assertThat(nest.deflection(nest.force(s))).isCloseTo(s, HAIR);
        assertThat(nest.stress(s)).isGreaterThanOrEqualTo(outer.stress(nest.outerDeflection(s)));
    }

    @Test
    void aNestSaysWhatRoomIsBetweenItsCoils() {
        HelicalSpring outer = new HelicalSpring(Coil.of(0.001, 0.010, 0.03, 8, Ends.both(EndType.CLOSED)), STEEL);
        HelicalSpring inner = new HelicalSpring(Coil.of(0.0006, 0.0074, 0.03, 8, Ends.both(EndType.CLOSED)), STEEL);
        Nest nest = Nest.of(outer, inner);
        assertThat(nest.sideGap()).isCloseTo(0.0003, within(1e-12));
        assertThat(nest.leastSideGap()).isCloseTo(0.0002, within(1e-12));
        assertThat(nest.greatestDeflection()).isCloseTo(0.03 - outer.coil().solid(), within(1e-12));
    }

    /** End to end: 1/k adds up; when one is solid the rest is as stiff as itself; the force never falls. */
    @ParameterizedTest
    @MethodSource("seeds")
    void stackedGivesAdd(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        HelicalSpring a = helical(random);
        HelicalSpring b = helical(random);
        SeriesStack stack = new SeriesStack(List.of(a, b));
        assertThat(1 / stack.rate()).isCloseTo(1 / a.rate() + 1 / b.rate(), HAIR);
        double last = 0;
        for (int i = 1; i <= 50; i++) {
            double force = stack.force(stack.greatestDeflection() * i / 50);
            assertThat(force).isGreaterThan(last);
            last = force;
        }
        double weaker = Math.min(a.force(a.greatestDeflection()), b.force(b.greatestDeflection()));
        assertThat(stack.force(weaker / stack.rate())).isCloseTo(weaker, HAIR);
        assertThat(stack.stress(weaker / stack.rate())).isGreaterThan(0);
        assertThatThrownBy(() -> new SeriesStack(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void extensionSpringsStartFromTheirInitialTension(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double wire = random.nextDouble(0.0005, 0.003);
        double mean = wire * random.nextDouble(5, 12);
        ExtensionSpring s = new ExtensionSpring(wire, mean, 12, 5, mean / 2, mean / 4, STEEL);
        assertThat(s.force(0)).isZero();
        assertThat(s.force(1e-9)).isCloseTo(5, Percentage.withPercentage(0.01));
        assertThat(s.force(0.01) - s.force(0.005)).isCloseTo(0.005 * s.rate(), HAIR);
        assertThat(s.stress(0.01)).isEqualTo(s.bodyStress(s.force(0.01)));
        assertThat(s.hookBending(10)).isGreaterThan(s.bodyStress(10));
        assertThat(s.greatestDeflection()).isInfinite();
        double most = FamilyLimits.force(s, 2e9);
        assertThat(s.hookBending(most)).isLessThanOrEqualTo(FamilyLimits.hookBending(2e9) * (1 + 1e-9));
        assertThat(s.bodyStress(most)).isLessThanOrEqualTo(FamilyLimits.body(2e9) * (1 + 1e-9));
    }

    /** The band narrows and falls as the coil gets wider; a thin band of the wire's own twist. */
    @Test
    void initialTensionFallsWithTheIndex() {
        double last = Double.POSITIVE_INFINITY;
        for (double index = 4; index <= 16; index++) {
            double middle = ExtensionSpring.initialTensionStress(index).middle();
            assertThat(middle).isLessThan(last);
            assertThat(ExtensionSpring.initialTension(0.001, index * 0.001).low())
                    .isPositive();
            last = middle;
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void torsionSpringsShrinkAndGrowLongerAsTheyWindUp(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double wire = random.nextDouble(0.0005, 0.003);
        TorsionSpring s = new TorsionSpring(wire, wire * 9, 5, 0.03, 200e9);
        double m = random.nextDouble(0.1, 1) * s.momentAt(1e9);
        assertThat(s.woundMean(s.bodyTurns(m))).isLessThan(s.mean());
        assertThat(s.bodyLength(s.bodyTurns(m))).isGreaterThan(s.bodyLength(0));
        assertThat(s.turns(m)).isGreaterThan(s.bodyTurns(m)).isCloseTo(m / s.rate(), HAIR);
        // the trade's allowance for rubbing over bending theory: 10.8 against 64/2π
        assertThat(s.turns(m) * 2 * Math.PI / s.frictionlessAngle(m)).isCloseTo(10.8 * 2 * Math.PI / 64, HAIR);
        assertThat(s.stress(s.momentAt(1e9))).isCloseTo(1e9, HAIR);
        assertThat(s.clearance(0.005, 0.3)).isLessThan(s.clearance(0.005, 0.1));
    }

    /** A slope taken by differences must be the one the formula gives; discs with a high cone snap through. */
    @ParameterizedTest
    @MethodSource("seeds")
    void discRatesAreSlopes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double t = random.nextDouble(0.0003, 0.002);
        DiscSpring d = new DiscSpring(0.02, 0.0102, t, t * random.nextDouble(0.3, 1.4), 206e9, 0.3);
        double s = d.cone() * random.nextDouble(0.05, 0.95);
        double step = d.cone() * 1e-5;
        assertThat((d.force(s + step) - d.force(s - step)) / (2 * step))
                .isCloseTo(d.rate(s), within(Math.abs(d.rate(0)) * 1e-6));
        assertThat(d.stressOne(s)).isNegative();
        assertThat(d.stress(s)).isPositive();
        assertThat(d.stressThree(s)).isPositive();
        DiscStack stack = new DiscStack(d, 2, 3);
        assertThat(stack.force(3 * s)).isCloseTo(2 * d.force(s), HAIR);
        assertThat(stack.greatestDeflection()).isEqualTo(3 * d.cone());
        assertThat(stack.freeLength()).isCloseTo(3 * (d.cone() + 2 * t), HAIR);
        assertThat(stack.forceWithFriction(3 * s, 0.02, 0.04).contains(stack.force(3 * s)))
                .isTrue();
        assertThat(stack.stress(3 * s)).isCloseTo(d.stress(s), HAIR);
    }

    @Test
    void highConesSnapThroughAndLowOnesDoNot() {
        DiscSpring high = new DiscSpring(0.02, 0.0102, 0.0005, 0.0009, 206e9, 0.3);
        DiscSpring low = new DiscSpring(0.02, 0.0102, 0.0011, 0.00045, 206e9, 0.3);
        assertThat(high.rate(high.cone())).isNegative();
        assertThat(low.rate(low.cone())).isPositive();
        assertThatThrownBy(() -> new DiscStack(low, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Twice the size all over: four times the force at twice the travel, the same stress. */
    @ParameterizedTest
    @MethodSource("seeds")
    void allFamiliesScale(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double a = random.nextDouble(0.5, 2);
        DiscSpring d = new DiscSpring(0.02 * a, 0.01 * a, 0.001 * a, 0.0005 * a, 206e9, 0.3);
        DiscSpring unit = new DiscSpring(0.02, 0.01, 0.001, 0.0005, 206e9, 0.3);
        assertThat(d.force(0.0003 * a)).isCloseTo(a * a * unit.force(0.0003), HAIR);
        assertThat(d.stressTwo(0.0003 * a)).isCloseTo(unit.stressTwo(0.0003), HAIR);
        ClickSpring c = new ClickSpring(0.02 * a, 0.005 * a, 0.0004 * a, 206e9);
        ClickSpring one = new ClickSpring(0.02, 0.005, 0.0004, 206e9);
        assertThat(c.force(0.001 * a)).isCloseTo(a * a * one.force(0.001), HAIR);
        assertThat(c.stress(0.001 * a)).isCloseTo(one.stress(0.001), HAIR);
        assertThat(one.deflectionAt(one.stress(0.001))).isCloseTo(0.001, HAIR);
        assertThat(one.stiffer()).isCloseTo(1 / 0.91, HAIR);
        assertThat(new ClickSpring(0.02, 0.003, 0.0004, 206e9).stiffer()).isEqualTo(1);
    }

    @Test
    void aHelicalSpringIsItsCoil() {
        Coil coil = Coil.of(0.001, 0.009, 0.03, 10, Ends.both(EndType.CLOSED));
        HelicalSpring s = new HelicalSpring(coil, STEEL);
        assertThat(s.force(0.005)).isCloseTo(coil.force(STEEL, 0.025), HAIR);
        assertThat(s.greatestDeflection()).isCloseTo(0.03 - coil.solid(), HAIR);
        assertThat(FamilySteel.tension()).isCloseTo(206e9, HAIR);
        assertThat(FamilySteel.rubBetween()).isPositive();
        assertThat(FamilySteel.rubAtEdges()).isPositive();
        assertThat(FamilyLimits.torsion(2e9)).isEqualTo(1.5e9);
    }
}
