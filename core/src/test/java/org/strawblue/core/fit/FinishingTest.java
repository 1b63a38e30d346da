package org.strawblue.core.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Bibliography;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;

class FinishingTest {

    private static final Heating SHIELDED = new Heating(273.15 + 800, 900, true);
    private static final Heating IN_AIR = new Heating(273.15 + 800, 900, false);
    private static final Estimate O1 = Estimate.of(Dimension.FRACTION, 0.0015, 0.0008, 0.0022);

    private static Feature feature(Feature.Kind kind, double millimetres, String zone) {
        double nominal = millimetres / 1000;
        return new Feature("the size", kind, nominal, Limits.of(nominal, zone).value());
    }

    private static FinishingPlan plan(Feature feature, Heating heating, FinishMethod method) {
        return Finishing.plan(feature, O1, heating, method).value().orElseThrow();
    }

    @Test
    void aCloseHoleIsReamedSmallAndLapped() {
        FinishingPlan plan = plan(feature(Feature.Kind.BORE, 6, "H7"), SHIELDED, FinishMethod.LAP);
        assertThat(plan.route()).isEqualTo(FinishingPlan.Route.FINISHED_HARD);
        Band before = plan.before().orElseThrow();
        assertThat(before.high()).isLessThan(0.006).isGreaterThan(0.00595);
        assertThat(plan.stepsBefore()).hasSize(2);
        assertThat(plan.stepsBefore().get(1).lead().template()).contains("reamer");
        assertThat(plan.stepsAfter().get(0).lead().template()).startsWith("Lap");
    }

    @Test
    void aClosePinIsTurnedLargeAndGround() {
        FinishingPlan plan = plan(feature(Feature.Kind.OUTSIDE, 10, "g6"), SHIELDED, FinishMethod.GRIND);
        Band before = plan.before().orElseThrow();
        // recalled shop table: 0.15 to 0.25 mm on 6 to 12 mm
        assertThat(plan.stock().orElseThrow().low()).isCloseTo(0.00015, within(1e-9));
        assertThat(before.low()).isBetween(0.01013, 0.01016);
        assertThat(plan.stepsAfter().get(0).lead().template()).startsWith("Grind");
    }

    @Test
    void wideLimitsAreMadeBeforeHardening() {
        FinishingPlan plan = plan(feature(Feature.Kind.LENGTH, 20, "h13"), SHIELDED, FinishMethod.LAP);
        assertThat(plan.route()).isEqualTo(FinishingPlan.Route.TO_SIZE_BEFORE);
        assertThat(plan.stock()).isEmpty();
    }

    @Test
    void withoutLimitsTheDrawingsSizeIsMade() {
        Feature free = new Feature("the size", Feature.Kind.FLAT, 0.01, Optional.empty());
        FinishingPlan plan = plan(free, SHIELDED, FinishMethod.LAP);
        assertThat(plan.route()).isEqualTo(FinishingPlan.Route.AS_IT_COMES);
        assertThat(plan.before()).isEmpty();
    }

    @Test
    void heatInAirCostsSkinAndSaysSo() {
        Answer<FinishingPlan> answer =
                Finishing.plan(feature(Feature.Kind.OUTSIDE, 10, "g6"), O1, IN_AIR, FinishMethod.LAP);
        FinishingPlan shielded = plan(feature(Feature.Kind.OUTSIDE, 10, "g6"), SHIELDED, FinishMethod.LAP);
        assertThat(answer.findings()).anyMatch(f -> f.what().template().contains("lose its carbon"));
        assertThat(answer.findings()).anyMatch(f -> f.what().template().contains("have to come off"));
        assertThat(answer.value().orElseThrow().before().orElseThrow().low())
                .isGreaterThan(shielded.before().orElseThrow().low());
    }

    @Test
    void beyondTheTablesNothingIsInvented() {
        Feature thick = new Feature(
                "the plate", Feature.Kind.FLAT, 0.08, Optional.of(new Band(Dimension.LENGTH, 0.08, 0.080005)));
        Answer<FinishingPlan> answer = Finishing.plan(thick, O1, SHIELDED, FinishMethod.GRIND);
        assertThat(answer.value()).isEmpty();
        assertThat(answer.findings()).anyMatch(Finding.Stop.class::isInstance);
    }

    /** Whatever the steel does as a whole, a hole may open or close. */
    @ParameterizedTest
    @CsvSource({"0.003", "0.0015", "0.0001", "-0.0005", "-0.002"})
    void aHolesChangeAlwaysHasBothSigns(double growth) {
        Estimate sure = Estimate.of(Dimension.FRACTION, growth, growth - 1e-6, growth + 1e-6);
        Estimate change = SizeChange.of(feature(Feature.Kind.BORE, 6, "H7"), sure);
        assertThat(change.low()).isNegative();
        assertThat(change.high()).isPositive();
    }

    /** O1 after a low temper, from memory: 0.0005 to 0.0015 of the length. */
    @Test
    void oilHardeningSteelGrowsAsRemembered() {
        Estimate change = SizeChange.of(feature(Feature.Kind.LENGTH, 100, "h7"), O1);
        assertThat(change.value() / 0.1).isBetween(0.0005, 0.0015);
        assertThat(change.low() / 0.1).isLessThan(0.0006);
        assertThat(change.high() / 0.1).isBetween(0.0014, 0.0022);
    }

    @Test
    void everyGradeOfTheCatalogueHasAChange() {
        for (Grade grade : Grades.all()) {
            Estimate asQuenched = SizeChange.asQuenched(grade);
            assertThat(asQuenched.low()).isBetween(-0.003, asQuenched.high());
            Answer<FinishingPlan> answer =
                    Finishing.plan(feature(Feature.Kind.OUTSIDE, 6, "g6"), grade, SHIELDED, FinishMethod.GRIND);
            assertThat(answer.value().orElseThrow().change().bases())
                    .isNotEmpty()
                    .allMatch(b -> Bibliography.find(b.source()).isPresent());
        }
    }

    /** Made anywhere in its band and changed anywhere in its interval, a size always leaves stock, or ends in limits. */
    @ParameterizedTest
    @EnumSource(Feature.Kind.class)
    void theSizeBeforeAlwaysLeavesSomethingToFinish(Feature.Kind kind) {
        SplittableRandom random = new SplittableRandom(kind.ordinal());
        List<String> zones =
                kind == Feature.Kind.BORE ? List.of("H6", "H7", "H9", "G7") : List.of("g6", "h7", "f7", "h9");
        for (int i = 0; i < 200; i++) {
            Feature f = feature(kind, random.nextDouble(2, 24), zones.get(random.nextInt(4)));
            FinishMethod method = FinishMethod.values()[random.nextInt(2)];
            FinishingPlan plan = plan(f, random.nextBoolean() ? SHIELDED : IN_AIR, method);
            Band before = plan.before().orElseThrow();
            Band limits = f.limits().orElseThrow();
            if (plan.route() == FinishingPlan.Route.TO_SIZE_BEFORE) {
                assertThat(before.width()).isGreaterThanOrEqualTo(2e-5 - 1e-12);
            } else if (kind == Feature.Kind.BORE) {
                assertThat(before.high() + plan.change().high()).isLessThan(limits.low());
            } else {
                assertThat(before.low() + plan.change().low()).isGreaterThan(limits.high());
            }
        }
    }

    /** Materials textbooks: 0.15 of 0.35 % after 10 h at 1127 °C, D printed; answer from the error function: 1.261 mm. */
    @ParameterizedTest
    @CsvSource({"6.9e-11, 0.15, 0.35, 1.261", "4.3e-11, 0.25, 0.55, 1.064", "3.3e-11, 0.25, 0.55, 0.932"})
    void carbonFadesAsInTheTextbooks(double diffusion, double left, double carbon, double millimetres) {
        assertThat(Decarburisation.depth(diffusion, 36000, left / carbon) * 1000)
                .isCloseTo(millimetres, Percentage.withPercentage(0.2));
    }

    @Test
    void theSkinDeepensWithHeatAndTheRootOfTime() {
        Estimate quarter = Decarburisation.skin(1073.15, 900);
        Estimate hour = Decarburisation.skin(1073.15, 3600);
        assertThat(hour.high()).isCloseTo(2 * quarter.high(), Percentage.withPercentage(1e-6));
        assertThat(Decarburisation.skin(1123.15, 900).high()).isGreaterThan(quarter.high());
        assertThat(quarter.low()).isZero();
        // bearing steel in air: none below 700 °C (abstract of a published study)
        assertThat(Decarburisation.skin(273.15 + 690, 3600).high()).isZero();
    }

    /** From memory, pure iron: 0.0556 mm of scale after a quarter hour at 800 °C, half of it metal. */
    @Test
    void scaleTakesMetal() {
        assertThat(Decarburisation.scaleLoss(1073.15, 900).high() * 2000).isCloseTo(0.0556, within(0.001));
    }

    @Test
    void aFeatureHasASize() {
        org.assertj.core.api.Assertions.assertThatThrownBy(
                        () -> new Feature("x", Feature.Kind.FLAT, 0, Optional.empty()))
                .hasMessageContaining("greater than 0");
    }
}
