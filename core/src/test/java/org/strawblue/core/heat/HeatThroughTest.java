package org.strawblue.core.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.source.Bibliography;
import org.strawblue.core.table.Table;

class HeatThroughTest {

    private static final double ZERO = 273.15;

    /** A bar whose ends do not count. */
    private static PartShape bar(double mm) {
        return new PartShape.RoundBar(mm / 1000, 1000);
    }

    private static Estimate time(double mm, String source, double celsius, HeatThrough.Surface surface) {
        return HeatThrough.time(bar(mm), HeatSources.of(source), ZERO + 20, ZERO + celsius, surface)
                .value()
                .orElseThrow();
    }

    /** EN 1993-1-2, worked from its own formulas: k and c at 270 °C, enthalpy from 20 °C. */
    @Test
    void propertiesAreThoseOfTheStandard() {
        assertThat(SteelProperties.conductivity(ZERO + 270)).isCloseTo(45.0, within(0.05));
        assertThat(SteelProperties.specificHeat(ZERO + 270)).isCloseTo(554, within(0.6));
        assertThat(SteelProperties.specificHeat(ZERO + 735)).isCloseTo(5000, within(10.0));
        assertThat(SteelProperties.conductivity(ZERO + 900)).isEqualTo(27.3);
        assertThat(SteelProperties.specificHeat(ZERO + 1000)).isEqualTo(650);
        assertThat(SteelProperties.enthalpy(ZERO + 20, ZERO + 270) / 1000).isCloseTo(126, within(0.6));
        assertThat(SteelProperties.enthalpy(ZERO + 20, ZERO + 780) / 1000).isCloseTo(545, within(2.0));
    }

    /** Seconds to within 10 K in an oven or kiln, against a separate radial finite-volume model of the same steel. */
    @ParameterizedTest
    @CsvSource({
        "6, 0.15, 6, 270, 1903", "12, 0.15, 6, 270, 3806", "25, 0.15, 6, 270, 7932", "12, 0.8, 6, 270, 1349",
        "25, 0.8, 6, 270, 2812", "12, 0.15, 22, 270, 1506", "6, 0.8, 22, 270, 436", "40, 0.8, 22, 270, 2915",
        "12, 0.8, 8, 800, 542", "25, 0.8, 8, 800, 1141", "40, 0.25, 8, 800, 5269"
    })
    void agreesWithARadialModel(double mm, double emissivity, double film, double celsius, double seconds) {
        Exposure exposure = Exposure.to(film, ZERO + celsius, emissivity, ZERO + celsius);
        double time = exposure.heating(bar(mm), ZERO + 20, ZERO + celsius - 10).orElseThrow();
        assertThat(time / seconds).isBetween(0.95, 1.04);
    }

    @Test
    void aBrightBarInAStillOvenTakesAnHour() {
        Estimate time = time(12, "kitchen-oven", 270, HeatThrough.Surface.BRIGHT);
        assertThat(time.value() / 60).isCloseTo(63, within(3.0));
        assertThat(time.low()).isLessThan(time.value());
        assertThat(time.high()).isGreaterThan(time.value());
    }

    /** A bar in a shrouded flame to 780 °C, by a separate model with 30 mm heated: within a factor of two. */
    @ParameterizedTest
    @CsvSource({"6, 54", "12, 138"})
    void aShroudedTorchBringsASmallBarToRed(double mm, double seconds) {
        Estimate time = time(mm, "shrouded-torch", 780, HeatThrough.Surface.SCALING);
        assertThat(time.value() / seconds).isBetween(0.5, 2.0);
    }

    /** Common practice: a plain propane torch brings thin strip to a full red, and is too weak for a 12 mm bar. */
    @Test
    void aPlainTorchBringsThinStripToHardeningHeat() {
        var answer = HeatThrough.time(
                new PartShape.Flat(0.0015, 0.010, 0.038),
                HeatSources.of("propane-torch"),
                ZERO + 20,
                ZERO + 800,
                HeatThrough.Surface.OXIDISED);
        assertThat(answer.value().orElseThrow().value()).isBetween(5.0, 120.0);
    }

    @Test
    void aPlainTorchNeverGetsAPinToHardeningHeat() {
        var answer = HeatThrough.time(
                bar(12), HeatSources.of("propane-torch"), ZERO + 20, ZERO + 800, HeatThrough.Surface.OXIDISED);
        assertThat(answer.stopped()).isTrue();
        assertThat(answer.findings().get(0).remedy().template()).contains("firebrick");
    }

    @Test
    void aPartOnAPlateComesToHeatInMinutes() {
        assertThat(time(12, "hot-plate", 270, HeatThrough.Surface.BRIGHT).value())
                .isBetween(200.0, 1500.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {3, 6, 12, 25})
    void thickerTakesLongerInProportion(double mm) {
        double one = time(mm, "kiln", 800, HeatThrough.Surface.SCALING).value();
        double two = time(2 * mm, "kiln", 800, HeatThrough.Surface.SCALING).value();
        assertThat(two / one).isCloseTo(2, within(0.01));
    }

    /** Centre from 800 to 500 °C in still air, by a separate radial model with emissivity 0.8. */
    @ParameterizedTest
    @CsvSource({"3, 31.9", "6, 64.1", "12, 129.1", "25, 273.2"})
    void airCoolingAgreesWithARadialModel(double mm, double seconds) {
        Estimate time = AirCooling.time(bar(mm), ZERO + 800, ZERO + 500);
        assertThat(time.value() / seconds).isBetween(0.85, 1.15);
        assertThat(time.band().contains(seconds)).isTrue();
    }

    /** A 15 min swing reaches a bright bar of 12 mm in a still oven as 0.12 of itself (separate model). */
    @Test
    void thickPartsDoNotFollowTheThermostat() {
        HeatSource still = HeatSources.of("kitchen-oven");
        double share = OvenError.rippleAtPart(still, bar(12), ZERO + 270)
                / still.traits().swing();
        assertThat(share).isCloseTo(0.12, within(0.02));
        assertThat(OvenError.timeConstant(HeatSources.of("fan-oven"), bar(12), ZERO + 270))
                .isCloseTo(470, within(50.0));
        Estimate part = OvenError.partTemperature(still, bar(12), ZERO + 200);
        assertThat(part.high() - part.value()).isBetween(15.0, 30.0);
    }

    @Test
    void sourcesAreFoundByTheWordsPeopleUse() {
        assertThat(HeatSources.find("Toaster Oven").value().orElseThrow()).isInstanceOf(HeatSource.Oven.class);
        assertThat(HeatSources.find("hotplate").value().orElseThrow()).isInstanceOf(HeatSource.HotPlate.class);
        assertThat(HeatSources.find("blowlamp").value().orElseThrow()).isInstanceOf(HeatSource.Torch.class);
        assertThat(HeatSources.find("kilm").findings().get(0).remedy().template())
                .contains("kiln");
        assertThat(HeatSources.find("zzzzzz").findings().get(0).remedy().template())
                .contains("kitchen-oven");
        assertThat(HeatSources.all()).hasSizeGreaterThan(8);
    }

    @Test
    void everyTableOfThePackageNamesKnownSources() {
        for (String table : List.of("heat-sources.csv", "heat.csv", "steel-properties.csv")) {
            Table.of(HeatSources.class, table)
                    .rows()
                    .forEach(row -> assertThat(Bibliography.find(row.text("source")))
                            .as("%s line %d", table, row.line())
                            .isPresent());
        }
    }
}
