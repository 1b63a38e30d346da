package org.strawblue.core.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

class FitsTest {

    private static final double INCH = 0.0254;
    private static final double THOU = 25.4e-6;
    private static final Expansion STEEL = Expansion.find("steel").orElseThrow();
    private static final Expansion BRASS = Expansion.find("brass").orElseThrow();

    private static Fit fit(double metres, String text) {
        return Fits.of(metres, text, false).value().orElseThrow();
    }

    /** ASME B4.1: the clearance columns as printed beside the limits, RC 1-7 and 9, LT 5-6, LN 1, FN; each row names its page. */
    @Test
    void inchClassesGiveThePrintedClearances() {
        List<Row> rows = Table.of(FitsTest.class, "inch-clearances.csv").rows();
        assertThat(rows).hasSizeGreaterThan(90);
        for (Row row : rows) {
            Band clearance =
                    fit(row.number("size_in") * INCH, row.text("class")).clearance();
            String place = row.text("class") + " " + row.text("size_in");
            assertThat(clearance.low() / THOU).as(place).isCloseTo(row.number("least_thou"), within(1e-6));
            assertThat(clearance.high() / THOU).as(place).isCloseTo(row.number("greatest_thou"), within(1e-6));
        }
    }

    /** Every row of the inch table has limits in order, and neighbouring sizes leave no gap within a class. */
    @Test
    void inchStepsFollowOnEachOther() {
        List<Row> rows = Table.of(AsmeB41.class, "inch_fits.csv").rows();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            assertThat(row.number("hole_low_thou")).isLessThan(row.number("hole_high_thou"));
            assertThat(row.number("shaft_low_thou")).isLessThan(row.number("shaft_high_thou"));
            if (i > 0 && rows.get(i - 1).text("class").equals(row.text("class"))) {
                assertThat(row.number("over_in")).isEqualTo(rows.get(i - 1).number("upto_in"));
                assertThat(row.number("hole_high_thou"))
                        .isGreaterThanOrEqualTo(rows.get(i - 1).number("hole_high_thou"));
            }
        }
    }

    /** ISO 286: H7/g6 at 10 mm 5 to 29 µm, H7/p6 at 18 mm 0 to 29 µm of interference, H7/k6 at 6 mm; differences of printed limits. */
    @ParameterizedTest
    @CsvSource({
        "10, H7/g6, 5, 29, CLEARANCE",
        "18, H7/p6, -29, 0, INTERFERENCE",
        "6, H7/k6, -9, 11, TRANSITION",
        "6, h7/g6, 0, 0, ",
        "8, H7 - u6, -37, -13, INTERFERENCE"
    })
    void isoFits(double millimetres, String text, double least, double greatest, Fit.Kind kind) {
        var answer = Fits.of(millimetres / 1000, text, false);
        if (kind == null) {
            assertThat(answer.value()).isEmpty();
            return;
        }
        Fit fit = answer.value().orElseThrow();
        assertThat(fit.clearance().low() * 1e6).isCloseTo(least, within(1e-6));
        assertThat(fit.clearance().high() * 1e6).isCloseTo(greatest, within(1e-6));
        assertThat(fit.kind()).isEqualTo(kind);
        assertThat(fit.likely().bases()).isNotEmpty();
    }

    /** ANSI B4.2 names its ten preferred fits so; each is to be had in letters at every size, and in inches where the table has it. */
    @Test
    void everyPurposeHasItsFit() {
        assertThat(PreferredFit.all()).hasSize(10);
        for (PreferredFit purpose : PreferredFit.all()) {
            for (double millimetres : new double[] {2, 5, 8, 25, 60, 110}) {
                assertThat(fit(millimetres / 1000, purpose.word()).designation())
                        .isEqualTo(purpose.iso());
            }
            assertThat(Fits.of(0.5 * INCH, purpose.word(), true)
                            .value()
                            .orElseThrow()
                            .designation())
                    .isEqualTo(purpose.inch());
        }
        assertThat(fit(0.008, "Plunger").designation()).isEqualTo("H7/g6");
    }

    @ParameterizedTest
    @ValueSource(strings = {"wobbly", "RC10", "H7", "", "H7/g6/k6", "LT3 {}"})
    void whatIsNoFitIsRefusedWithTheChoice(String text) {
        var answer = Fits.of(0.008, text, false);
        assertThat(answer.value()).isEmpty();
        assertThat(answer.findings()).allMatch(Finding.Stop.class::isInstance);
    }

    @Test
    void sizesOutsideAClassAreToldWithItsLimits() {
        var answer = Fits.of(0.1 * INCH, "LT3", false);
        assertThat(answer.value()).isEmpty();
        assertThat(answer.findings().get(0).what().amounts()).hasSize(2);
    }

    /** Same metal in either system: the fit of a size does not depend on the unit it was read in. */
    @Test
    void unitsDoNotMatter() {
        assertThat(fit(9.525e-3, "RC4").clearance())
                .isEqualTo(fit(0.375 * INCH, "RC4").clearance());
        assertThat(fit(30 / 25.4 * INCH, "H7/g6").clearance().high())
                .isCloseTo(fit(0.03, "H7/g6").clearance().high(), within(1e-12));
    }

    /** Two uniform sizes: 10 % of a triangle's area lies below 1 − √0.2 of half its base from the end. */
    @Test
    void likelyClearanceIsThatOfTwoUniformSizes() {
        Fit even = new Fit("even", 1, band(0, 2e-5), band(-4e-5, -2e-5), List.of());
        Estimate likely = even.likely();
        assertThat(likely.value()).isCloseTo(4e-5, within(2e-8));
        assertThat(likely.low()).isCloseTo(2e-5 + 2e-5 * Math.sqrt(0.2), within(4e-8));
        assertThat(even.chanceOfPlay()).isEqualTo(1);
    }

    /** The shaft told for a measured hole keeps the clearance wanted at both ends of what is known. */
    @Test
    void aShaftMadeToAHoleFitsWhateverTheReadingsHid() {
        SplittableRandom random = new SplittableRandom(71);
        for (int i = 0; i < 500; i++) {
            double d = 0.004 + 0.03 * random.nextDouble();
            Band wanted = fit(d, "H8/f7").clearance();
            double e = 4e-6 * random.nextDouble();
            Estimate hole = about(d + 2e-5 * random.nextDouble(), 3e-6);
            Band shaft = Matching.shaftFor(hole, wanted, e).value().orElseThrow();
            for (double h : new double[] {hole.low(), hole.high()}) {
                for (double s : new double[] {shaft.low() - e, shaft.high() + e}) {
                    assertThat(h - s).isBetween(wanted.low() - 1e-12, wanted.high() + 1e-12);
                }
            }
            Band back = Matching.holeFor(about(shaft.middle(), 1e-6), wanted, e)
                    .value()
                    .orElseThrow();
            assertThat(back.contains(hole.value())).isTrue();
        }
    }

    @Test
    void aCoarseMeasurementIsRefusedWithHowFineItMustBe() {
        var answer = Matching.shaftFor(about(0.008, 25e-6), band(5e-6, 29e-6), 4e-6);
        assertThat(answer.value()).isEmpty();
        assertThat(answer.findings().get(0).remedy().amounts()).hasSize(1);
    }

    @Test
    void moreErrorLeavesLessRoom() {
        double last = Double.POSITIVE_INFINITY;
        for (double half = 0; half < 10e-6; half += 1e-6) {
            double width = Matching.shaftFor(about(0.008, half), band(5e-6, 40e-6), 2e-6)
                    .value()
                    .orElseThrow()
                    .width();
            assertThat(width).isLessThan(last);
            last = width;
        }
    }

    /** Δ = D Δα ΔT, worked by hand: 20 mm brass on steel, 50 K: 20 · 7.2e-6 · 50 = 7.2 µm. */
    @Test
    void playGoesWithTheMetals() {
        Estimate cold = about(20e-6, 5e-6);
        Estimate brassShaft = Expansion.clearanceAt(cold, 0.02, STEEL, BRASS, 343.15);
        assertThat(brassShaft.value()).isCloseTo(12.8e-6, within(1e-9));
        assertThat(brassShaft.high() - brassShaft.low()).isGreaterThan(10e-6);
        assertThat(Expansion.clearanceAt(cold, 0.02, BRASS, STEEL, 343.15).value())
                .isCloseTo(27.2e-6, within(1e-9));
        assertThat(Expansion.clearanceAt(cold, 0.02, STEEL, STEEL, 343.15)).isEqualTo(cold);
        assertThat(Warming.atWork(about(6e-6, 1e-6), about(1e-6, 4e-6), 350)).hasSize(1);
        assertThat(Warming.atWork(cold, brassShaft, 343)).isEmpty();
    }

    /** A tighter pair needs more heat, an aluminium body less than a steel one; beyond 250 °C none is told. */
    @Test
    void warmingRisesWithInterference() {
        Expansion aluminium = Expansion.find("aluminum").orElseThrow();
        double steel = Warming.toAssemble(about(-10e-6, 5e-6), 0.014, STEEL)
                .orElseThrow()
                .kelvin();
        double tighter = Warming.toAssemble(about(-15e-6, 5e-6), 0.014, STEEL)
                .orElseThrow()
                .kelvin();
        assertThat(tighter).isGreaterThan(steel);
        assertThat(Warming.toAssemble(about(-10e-6, 5e-6), 0.014, aluminium)
                        .orElseThrow()
                        .kelvin())
                .isLessThan(steel);
        assertThat(Warming.toAssemble(about(-60e-6, 5e-6), 0.006, STEEL)).isEmpty();
        assertThat(Warming.toAssemble(about(-15e-6, 5e-6), 0.014, STEEL)
                        .orElseThrow()
                        .findings())
                .hasSizeGreaterThan(1);
    }

    /** DIN 1420's reamer is offered where a reamer can hold the grade; a finer hole is lapped. */
    @Test
    void theToolSuitsTheGrade() {
        assertThat(tool("H11")).isEqualTo("drill");
        assertThat(tool("H7")).isEqualTo("reamer");
        assertThat(tool("H5")).isEqualTo("lap");
        assertThat(HoleTool.hard(0.008, limits("H7"))).extracting(HoleTool::key).containsExactly("lap-hard");
        assertThat(HoleTool.soft(0.008, band(0.008, 0.0080001))).isEmpty();
    }

    private static String tool(String zone) {
        return HoleTool.soft(0.008, limits(zone)).get(0).key();
    }

    private static Band limits(String zone) {
        return Limits.of(0.008, zone).value().orElseThrow();
    }

    @Test
    void instrumentsAreKnownByTheirTradeNames() {
        assertThat(Instrument.find("mike").orElseThrow().name()).isEqualTo("micrometer");
        assertThat(Instrument.find("Telescopic Gauge").orElseThrow().twoPoint()).isTrue();
        assertThat(Instrument.find("eye")).isEmpty();
        assertThat(Instrument.names()).contains("bore gauge");
        assertThat(Expansion.names()).contains("aluminium");
    }

    private static Estimate about(double value, double half) {
        return Estimate.of(Dimension.LENGTH, value, value - half, value + half);
    }

    private static Band band(double low, double high) {
        return new Band(Dimension.LENGTH, low, high);
    }
}
