package org.strawblue.core.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.source.Bibliography;

class CompressionSpringTest {

    private static CompressionSpring of(MeasuredSpring spring) {
        return CompressionSpring.of(spring, Optional.empty(), OptionalDouble.empty());
    }

    private static CompressionSpring music(double coils, MeasurementErrors errors) {
        MeasuredSpring s = Drawer.spring("s", 1, 9, 30, coils, EndType.CLOSED_GROUND, "music wire");
        return of(new MeasuredSpring(
                s.name(), 0, s.wire(), s.outsideDiameter(), s.freeLength(), coils, s.ends(), s.material(), errors, 1));
    }

    /**
     * Worked by hand with (4 + 3/C) δd/d, 3 (1 + 1/C) δD/D, δn/n: wire 1.00 ± 0.01, outside 9.00 ± 0.05, six active coils
     * ± ¼: 4.4, 1.9 and 4.2 %.
     */
    @Test
    void theErrorBudgetIsTheHandWorkedOne() {
        assertThat(spread(new MeasurementErrors(1e-5, 0, 0, 0))).isCloseTo(0.044, within(0.002));
        assertThat(spread(new MeasurementErrors(0, 5e-5, 0, 0))).isCloseTo(0.019, within(0.001));
        assertThat(spread(new MeasurementErrors(0, 0, 0, 0.25))).isCloseTo(0.042, within(0.002));
    }

    /** What one measurement adds to the spread that modulus and formula leave. */
    private static double spread(MeasurementErrors errors) {
        double with = relative(music(8, errors).rate());
        double without = relative(music(8, new MeasurementErrors(0, 0, 0, 0)).rate());
        return Math.sqrt(with * with - without * without);
    }

    private static double relative(Estimate estimate) {
        return (estimate.high() - estimate.low()) / 2 / estimate.value();
    }

    /** Textbook problem 10-3 by name of its parts: 1.314 N/mm, 35 mm solid. The modulus is ours, the pitch counts. */
    @Test
    void isTheTextbooksSpring() {
        CompressionSpring spring = of(Drawer.spring("10-3", 2.5, 31, 162.8, 14, EndType.OPEN_GROUND, "music wire"));
        assertThat(spring.rate().value() / 1000).isCloseTo(1.314, Percentage.withPercentage(1));
        assertThat(spring.solidLength().value()).isCloseTo(0.035, within(1e-9));
        assertThat(spring.rate().low()).isLessThan(1314).isPositive();
        assertThat(spring.stressAtSolid().value() / 1e6).isCloseTo(871.2, Percentage.withPercentage(1.5));
    }

    @Test
    void everyFigureSaysWhatItRestsOn() {
        CompressionSpring spring = of(Drawer.spring("s", 1, 9, 30, 8, EndType.CLOSED, "stainless"));
        for (Estimate e : List.of(
                spring.rate(),
                spring.force(0.02),
                spring.stress(0.02),
                spring.freeLength(),
                spring.solidLength(),
                spring.outside(0.02),
                spring.shortestLength(false),
                spring.forceAtSet().orElseThrow(),
                spring.surge())) {
            assertThat(e.bases())
                    .isNotEmpty()
                    .allMatch(b -> Bibliography.find(b.source()).isPresent());
            assertThat(e.low()).isLessThan(e.high());
        }
    }

    @Test
    void theStressAtTheForceOfSetIsTheAllowable() {
        CompressionSpring spring = of(Drawer.spring("s", 1, 9, 30, 8, EndType.CLOSED, "hard drawn"));
        double force = spring.forceAtSet().orElseThrow().value();
        assertThat(new Bergstraesser().stress(force, 0.008, 0.001))
                .isCloseTo(spring.allowable().orElseThrow().stress(), Percentage.withPercentage(1e-6));
    }

    @Test
    void unknownEndsAndUnknownWireCostCertainty() {
        MeasuredSpring known = Drawer.spring("s", 1, 9, 30, 8, EndType.CLOSED, "music wire");
        MeasuredSpring ends = with(known, Optional.empty(), known.material());
        MeasuredSpring wire = with(known, known.ends(), Optional.empty());
        assertThat(relative(of(ends).rate()))
                .isGreaterThan(1.3 * relative(of(known).rate()));
        assertThat(relative(of(wire).rate()))
                .isGreaterThan(1.1 * relative(of(known).rate()));
        assertThat(of(wire).material().key()).isEqualTo(SpringMaterial.Key.UNKNOWN);
    }

    private static MeasuredSpring with(MeasuredSpring s, Optional<Ends> ends, Optional<String> material) {
        return new MeasuredSpring(
                s.name(),
                s.row(),
                s.wire(),
                s.outsideDiameter(),
                s.freeLength(),
                s.totalCoils(),
                ends,
                material,
                s.errors(),
                s.quantity());
    }

    @Test
    void fewCoilsWidenTheBand() {
        CompressionSpring few = of(Drawer.spring("s", 1, 9, 20, 4.75, EndType.CLOSED_GROUND, "music wire"));
        double classical = new ClassicalRate().rate(few.moduli(), 0.001, 0.008, 2.75, 0);
        assertThat(few.rate().value() / classical).isBetween(1.05, 1.13);
    }

    @Test
    void impossibleSpringsAreNotTaken() {
        org.assertj.core.api.Assertions.assertThatThrownBy(
                        () -> Drawer.spring("s", 5, 9, 30, 8, EndType.CLOSED, "music wire"))
                .hasMessageContaining("no such spring");
    }
}
