package org.strawblue.core.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

class LimitsTest {

    private static Band deviations(double millimetres, String zone) {
        Band limits = Limits.of(millimetres / 1000, zone).value().orElseThrow();
        return new Band(
                limits.dimension(),
                (limits.low() * 1000 - millimetres) * 1000,
                (limits.high() * 1000 - millimetres) * 1000);
    }

    /** 336 cells read from printed tables of holes and shafts, up to 80 mm; each row names its source. */
    @Test
    void equalsEveryPrintedCell() {
        List<Row> cells = Table.of(LimitsTest.class, "iso-cells.csv").rows();
        assertThat(cells).hasSizeGreaterThan(330);
        for (Row cell : cells) {
            Band ours = deviations(cell.number("nominal_mm"), cell.text("class"));
            String place = cell.text("nominal_mm") + " " + cell.text("class");
            assertThat(ours.high()).as(place).isCloseTo(cell.number("upper_um"), within(1e-6));
            assertThat(ours.low()).as(place).isCloseTo(cell.number("lower_um"), within(1e-6));
        }
    }

    /** ANSI B4.2, table 6-5: K7/h6 at 10 mm, +0.014 to −0.010; P7/h6 at 12 mm, 0 to −0.029. */
    @ParameterizedTest
    @CsvSource({"10, K7, 0.014, -0.010", "12, P7, 0, -0.029", "8, S7, -0.008, -0.032", "12, N7, 0.006, -0.023"})
    void fitsAreThePrintedOnes(double nominal, String hole, double most, double least) {
        Band clearance = Limits.clearance(
                Limits.of(nominal / 1000, hole).value().orElseThrow(),
                Limits.of(nominal / 1000, "h6").value().orElseThrow());
        assertThat(clearance.high() * 1000).isCloseTo(most, within(1e-9));
        assertThat(clearance.low() * 1000).isCloseTo(least, within(1e-9));
    }

    /** A size in inches that is exactly a step's limit belongs to the step below it: 1.1811 in is 30 mm. */
    @Test
    void theUpperLimitBelongsToItsStep() {
        assertThat(deviations(30, "H7").high()).isCloseTo(21, within(1e-6));
        assertThat(deviations(30.001, "H7").high()).isCloseTo(25, within(1e-6));
        assertThat(ToleranceGrades.of(30 / 25.4 * 0.0254, 7).orElseThrow()).isCloseTo(21e-6, within(1e-12));
    }

    @Test
    void largeHolesNAreFlushAboveGradeEight() {
        assertThat(deviations(10, "N9").high()).isCloseTo(0, within(1e-9));
        assertThat(deviations(2, "N9").high()).isCloseTo(-4, within(1e-9));
        assertThat(deviations(10, "k8").low()).isCloseTo(0, within(1e-9));
        assertThat(deviations(10, "JS7").low()).isCloseTo(-7.5, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"H", "7", "H77", "q6", "H7/g6", "{}", "", "I6", "H2", "js"})
    void whatIsNoZoneIsRefusedWithTheReason(String zone) {
        var answer = Limits.of(0.01, zone);
        assertThat(answer.value()).isEmpty();
        assertThat(answer.findings()).hasSize(1).allMatch(Finding.Stop.class::isInstance);
    }

    @Test
    void sizesBeyondTheTableAreRefused() {
        assertThat(Limits.of(0.2, "H7").value()).isEmpty();
        assertThat(ToleranceGrades.of(0.2, 7)).isEmpty();
    }

    /** DIN 1420 table for H7 [µm]: smallest and largest reamer above nominal. */
    @ParameterizedTest
    @CsvSource({"3, 4, 8", "6, 5, 10", "10, 6, 12", "18, 8, 15", "30, 9, 17", "50, 12, 21", "80, 14, 25"})
    void reamersAreTheStandards(double nominal, double smallest, double largest) {
        Band reamer = Reamer.forHole(Limits.of(nominal / 1000, "H7").value().orElseThrow());
        assertThat((reamer.low() * 1000 - nominal) * 1000).isCloseTo(smallest, within(1e-6));
        assertThat((reamer.high() * 1000 - nominal) * 1000).isCloseTo(largest, within(1e-6));
    }
}
