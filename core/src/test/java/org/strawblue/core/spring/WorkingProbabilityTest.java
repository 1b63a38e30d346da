package org.strawblue.core.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.SplittableRandom;
import org.hipparchus.special.Erf;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.strawblue.core.estimate.Normal;

/** The even-points integral against plain chance: 100,000 springs drawn at random, each judged by its own margins. */
class WorkingProbabilityTest {

    private static final int DRAWS = 100_000;

    @ParameterizedTest
    @CsvSource({
        "0.8, 7.4, 32, 11, CLOSED_GROUND, music wire, 0",
        "0.8, 7.4, 32, 11, CLOSED_GROUND, music wire, 0.5",
        "0.9, 8.0, 34, 11, CLOSED_GROUND, stainless, 1.5",
        "0.81, 7.37, 34.9, 12, CLOSED_GROUND, hard drawn, 2",
        "0.6, 6.2, 120, 42, CLOSED, music wire, 26.5",
        "0.8, 8.5, 34, 9, CLOSED_GROUND, nobody knows, 0",
        "0.85, 9.36, 31, 7.5, CLOSED_GROUND, music wire, 0",
        "0.8, 7.4, 29.5, 9.5, OPEN_GROUND, music wire, 0",
    })
    void agreesWithChanceWithinOnePercent(
            double wire, double outside, double free, double coils, EndType ends, String material, double removed) {
        MeasuredSpring spring = Drawer.spring("s", wire, outside, free, coils, ends, material);
        Pocket pocket = Drawer.pocket(9.6, 4, 26, 8, new double[] {5, 10}, new double[] {12, 25});
        Optional<Cut> cut = removed > 0 ? Optional.of(new Cut(removed, false, ends)) : Optional.empty();
        CompressionSpring state = CompressionSpring.of(spring, cut, pocket.temperature());
        Duty duty = Duty.of(pocket, state.moduli(), state.allowable().orElseThrow());

        double even = WorkingProbability.fine().of(state.inputs(), cut, duty);

        assertThat(even).isCloseTo(chance(state.inputs(), cut, duty), within(0.01));
    }

    private static double chance(MeasuredInputs in, Optional<Cut> cut, Duty duty) {
        SplittableRandom random = new SplittableRandom(20);
        double active = in.nominal(cut).active();
        int works = 0;
        for (int i = 0; i < DRAWS; i++) {
            double[] x = new double[MeasuredInputs.COUNT];
            for (int k = 0; k < x.length; k++) {
                double half = k == MeasuredInputs.STIFFNESS ? in.stiffnessHalfWidth(active) : in.halfWidth()[k];
                x[k] = in.middle()[k] + normal(random) * half / Normal.HALF_OF_80;
            }
            Coil coil = in.coil(cut, x[0], x[1], x[2], x[3], x[4]);
            works += Margins.of(coil, duty).kept() ? 1 : 0;
        }
        return (double) works / DRAWS;
    }

    private static double normal(SplittableRandom random) {
        return Math.sqrt(2) * Erf.erfInv(2 * random.nextDouble() - 1);
    }
}
