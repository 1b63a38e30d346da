package org.strawblue.core.spring.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.SpringMaterial;

/** Springback against the recalled table of arbors, and against itself; the sheet of a winding. */
class WindingTest {

    private static final SpringMaterial MUSIC = SpringMaterial.of(SpringMaterial.Key.MUSIC);
    private static final Coil WANTED = Coil.of(0.0008, 0.0074, 0.031, 10.5, Ends.both(EndType.CLOSED_GROUND));

    /** Handbook table of arbors for music wire, recalled: 0.008 and 0.010 in wire, outside by 1/32 in. From memory, 2.5 %. */
    @ParameterizedTest
    @CsvSource({
        "0.008, 0.0625, 0.039", "0.008, 0.09375, 0.060", "0.008, 0.125, 0.078", "0.008, 0.15625, 0.093",
        "0.008, 0.1875, 0.107", "0.008, 0.21875, 0.119", "0.008, 0.25, 0.129", "0.010, 0.0625, 0.037",
        "0.010, 0.09375, 0.060", "0.010, 0.125, 0.080", "0.010, 0.15625, 0.099", "0.010, 0.1875, 0.115",
        "0.010, 0.21875, 0.129", "0.010, 0.25, 0.142",
    })
    void arborsAreThoseOfTheTable(double wireInch, double outsideInch, double arborInch) {
        double wire = wireInch * 0.0254;
        double strength = MUSIC.allowable(wire).orElseThrow().strength();
        double tension = MUSIC.stiffness(wire).moduli().tension();
        double arbor = Springback.arbor((outsideInch - wireInch) * 0.0254, wire, 1.08 * strength, tension);
        assertThat(arbor / 0.0254).isCloseTo(arborInch, Percentage.withPercentage(2.6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.004, 0.006, 0.009, 0.015})
    void arborAndFreeCoilAreInverse(double mean) {
        double arbor = Springback.arbor(mean, 0.001, 2.4e9, 206e9);
        assertThat(Springback.free(arbor, 0.001, 2.4e9, 206e9)).isCloseTo(mean, within(1e-9));
        assertThat(arbor).isLessThan(mean - 0.001);
        assertThat(Springback.yield(arbor, mean, 0.001, 206e9)).isCloseTo(2.4e9, Percentage.withPercentage(1e-4));
        assertThat(Springback.arbor(mean, 0.001, 2.6e9, 206e9)).isLessThan(arbor);
    }

    @Test
    void wireBentLessThanItsYieldSpringsBackStraight() {
        assertThat(Springback.free(1, 0.001, 2.4e9, 206e9)).isInfinite();
    }

    @Test
    void theSheetHangsTogether() {
        WindingPlan plan =
                WindingPlan.of(WANTED, MUSIC, Optional.empty()).value().orElseThrow();
        assertThat(plan.arbor().value())
                .isBetween(plan.arbor().low(), plan.arbor().high());
        assertThat(plan.turns().value()).isGreaterThan(WANTED.total());
        assertThat(plan.asWound()).isGreaterThan(WANTED.mean());
        assertThat(plan.pitch()).isLessThan(WANTED.pitch());
        double bare = Math.PI * WANTED.mean() * WANTED.total();
        assertThat(plan.wire()).isGreaterThan(bare + 2 * 0.15);
        assertThat(plan.lathe()).isCloseTo(plan.pitch(), Percentage.withPercentage(20));
        assertThat(plan.relief().orElseThrow().temperature()).isCloseTo(533.15, within(0.01));
    }

    /** A trial wound on the arbor of the sheet that came out too wide asks for a thinner one, and with a narrower band. */
    @Test
    void aTrialCorrectsTheArbor() {
        WindingPlan first =
                WindingPlan.of(WANTED, MUSIC, Optional.empty()).value().orElseThrow();
        double arbor = first.arbor().value();
        WindingPlan wide = WindingPlan.of(WANTED, MUSIC, Optional.of(new TrialCoil(arbor, 0.0078)))
                .value()
                .orElseThrow();
        WindingPlan tight = WindingPlan.of(WANTED, MUSIC, Optional.of(new TrialCoil(arbor, 0.0070)))
                .value()
                .orElseThrow();
        WindingPlan right = WindingPlan.of(WANTED, MUSIC, Optional.of(new TrialCoil(arbor, 0.0074)))
                .value()
                .orElseThrow();
        assertThat(wide.arbor().value()).isLessThan(arbor);
        assertThat(tight.arbor().value()).isGreaterThan(arbor);
        assertThat(right.arbor().value()).isCloseTo(arbor, Percentage.withPercentage(0.1));
    }

    @Test
    void everySheetWarnsOfTheWireTheMachineAndTheLettingGo() {
        for (double wire : new double[] {0.0003, 0.0008, 0.009}) {
            Coil coil = Coil.of(wire, 9 * wire, 40 * wire, 10, Ends.both(EndType.CLOSED_GROUND));
            List<String> said = WindingPlan.of(coil, MUSIC, Optional.empty()).value().stream()
                    .flatMap(p -> p.findings().stream())
                    .filter(Finding.Caution.class::isInstance)
                    .map(f -> f.what().template())
                    .toList();
            assertThat(said)
                    .anyMatch(t -> t.contains("whips"))
                    .anyMatch(t -> t.contains("slowest back gear"))
                    .anyMatch(t -> t.contains("let go"));
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"MUSIC", "HARD_DRAWN", "OIL_TEMPERED", "STAINLESS", "PHOSPHOR_BRONZE"})
    void everyWireHasItsHeat(SpringMaterial.Key key) {
        StressRelief relief = StressRelief.of(SpringMaterial.of(key)).orElseThrow();
        assertThat(relief.range().contains(relief.temperature())).isTrue();
        assertThat(relief.before(1)).isCloseTo(1, within(0.03));
    }

    /** Stainless opens, carbon wire closes (stress-relief pages); what nobody knows is refused. */
    @Test
    void stainlessOpensAndUnknownWireIsRefused() {
        assertThat(StressRelief.of(SpringMaterial.of(SpringMaterial.Key.STAINLESS))
                        .orElseThrow()
                        .change()
                        .low())
                .isPositive();
        Coil thick = Coil.of(0.05, 0.5, 2, 10, Ends.both(EndType.CLOSED));
        Answer<WindingPlan> none = WindingPlan.of(thick, MUSIC, Optional.empty());
        assertThat(none.value()).isEmpty();
        assertThat(none.stopped()).isTrue();
    }
}
