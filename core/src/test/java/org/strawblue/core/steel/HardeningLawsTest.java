package org.strawblue.core.steel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;

class HardeningLawsTest {

    private static final double ZERO = 273.15;
    private static final double INCH = 0.0254;

    /** Initial hardness and 50 % martensite of ASTM A255 at 0.40 % C. */
    @Test
    void hardnessOfMartensite() {
        assertThat(A255Hardness.full().of(0.4).value().orElseThrow().value()).isCloseTo(56.3, within(0.1));
        assertThat(A255Hardness.half().of(0.4).value().orElseThrow().value()).isCloseTo(42.4, within(0.1));
        assertThat(A255Hardness.full().of(0.8).stopped()).isTrue();
        assertThat(A255Hardness.full().held(0.8).value().orElseThrow().value()).isEqualTo(65.5);
        assertThat(A255Hardness.half().held(0.05).stopped()).isTrue();
        assertThat(new Just().of(0.36).value().orElseThrow().value()).isCloseTo(56, within(1e-9));
        assertThat(new Just().of(0.8).stopped()).isTrue();
    }

    /** ASTM A255, worked example SAE 4118 modified: 1.95 in with the factors rounded, 1.932 in unrounded. */
    @Test
    void idealDiameterOfTheWorkedExample() {
        Composition c = new Composition(0.22, 0.80, 0.18, 0.43, 0.10, 0.25, 0.05, 0, 0, 0.10);
        double inches = new A255IdealDiameter().of(c).value().orElseThrow().value() / INCH;
        assertThat(inches).isCloseTo(1.932, within(0.001));
        assertThat(new A255IdealDiameter().of(c.with(Element.CR, 5)).stopped()).isTrue();
        assertThat(A255IdealDiameter.grainFactor(7)).isEqualTo(1);
        assertThat(A255IdealDiameter.grainFactor(4)).isEqualTo(1.270);
        assertThat(A255IdealDiameter.grainFactor(8)).isCloseTo(0.92, within(1e-12));
    }

    /** First roots of ζ J₁ = Bi J₀ and Fo of half temperature with the surface held cold: standard heat-transfer tables. */
    @ParameterizedTest
    @CsvSource({"0.01, 0.1412", "0.1, 0.4417", "1, 1.2558", "10, 2.1795"})
    void rootsOfTheLongCylinder(double biot, double zeta) {
        assertThat(Grossmann.root(0, biot)).isCloseTo(zeta, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({"1, 1.29", "0.35, 0.70", "5, 1.81"})
    void criticalDiameterForTwoInchesIdeal(double severity, double inches) {
        double d = Grossmann.criticalDiameter(2 * INCH, severity / INCH) / INCH;
        assertThat(d).isCloseTo(inches, within(0.006));
        assertThat(Grossmann.idealDiameter(d * INCH, severity / INCH) / INCH).isCloseTo(2, within(1e-6));
        assertThat(Grossmann.halfTemperature(1e6)).isCloseTo(0.2005, within(1e-4));
    }

    /** Twelve W-type heats, observed critical diameters 4 to 25 mm in brine: the corrected law lies among them. */
    @Test
    void correctedW1LiesAmongTheObservedHeats() {
        double ideal = new A255IdealDiameter()
                .of(Grades.of("W1"))
                .value()
                .orElseThrow()
                .value();
        assertThat(Grossmann.criticalDiameter(ideal, 5 / INCH) * 1000).isBetween(8.0, 16.0);
    }

    /** X30Cr13: 280 °C on its card; 4340: 299 °C computed, literature 285 to 320. */
    @Test
    void martensiteStart() {
        Composition x30 = Grades.of("420").composition();
        assertThat(new Barbier().of(x30).value().orElseThrow().value() - ZERO).isCloseTo(280, within(20.0));
        Composition c4340 = Grades.of("4340").composition();
        assertThat(new Barbier().of(c4340).value().orElseThrow().value() - ZERO).isCloseTo(299, within(2.0));
        assertThat(new AndrewsLinear().of(c4340).value().orElseThrow().value() - ZERO)
                .isCloseTo(305, within(2.0));
        assertThat(new StevenHaynes().of(c4340).value().orElseThrow().value() - ZERO)
                .isCloseTo(300, within(15.0));
        assertThat(new AndrewsLinear().of(Grades.of("52100").composition()).stopped())
                .isTrue();
        assertThat(new Barbier().of(Composition.carbon(2)).stopped()).isTrue();
    }

    /** Andrews' short form on 4140: 795 °C from memory, 790 on a steelmaker's card. */
    @Test
    void criticalPoints() {
        CriticalPoints points = new AndrewsCriticalPoints()
                .of(Grades.of("4140").composition())
                .value()
                .orElseThrow();
        assertThat(points.ac3().value() - ZERO).isCloseTo(795, within(10.0));
        assertThat(points.ac1().value() - ZERO).isCloseTo(740, within(10.0));
        assertThat(new AndrewsCriticalPoints().of(Composition.carbon(0.9)).stopped())
                .isTrue();
    }

    /** A eutectoid steel loses its magnetism with its ferrite, near 730; one of low carbon at the Curie point, near 770 °C. */
    @ParameterizedTest
    @CsvSource({"W1, 730", "1084, 725", "1018, 770", "O1, 743", "A2, 770"})
    void magnetLetsGo(String grade, double celsius) {
        Grade g = Grades.of(grade);
        Estimate point = CriticalPoints.of(g)
                .value()
                .orElseThrow()
                .magnetLetsGo(g.composition().c());
        assertThat(point.value() - ZERO).isCloseTo(celsius, within(11.0));
    }

    /** Koistinen and Marburger: 1.1 % left 0 K below… none turned at Ms; exp(−0.011·200) = 0.1108 at 200 K below. */
    @Test
    void retainedAustenite() {
        Estimate start =
                Estimate.of(Dimension.TEMPERATURE, 493, 483, 503, new Basis("Ms", "assumed", Standing.ASSUMED));
        var law = new RetainedAustenite.KoistinenMarburger();
        assertThat(law.share(start, 293).value()).isCloseTo(0.1108, within(1e-4));
        assertThat(law.share(start, 493).value()).isEqualTo(1);
        assertThat(law.share(start, 293).band().contains(0.115)).isTrue();
        Estimate o1 = RetainedAustenite.of(Grades.of("O1"), 293).value().orElseThrow();
        assertThat(o1.band().contains(0.115)).isTrue();
    }

    /** −2.43 % at 1.0 % C for spheroidite to austenite; O1 +0.15, A2 +0.10, S7 +0.10 % of length on the suppliers' sheets. */
    @ParameterizedTest
    @CsvSource({"O1, 0.15", "A2, 0.10", "S7, 0.10"})
    void volumeChange(String name, double percent) {
        assertThat(VolumeChange.austenite(1.0)).isCloseTo(-2.43, within(1e-9));
        Grade grade = Grades.of(name);
        Estimate retained = RetainedAustenite.of(grade, 293).value().orElseThrow();
        Estimate computed = VolumeChange.computed(grade, retained);
        assertThat(computed.band().contains(percent / 100)).isTrue();
        assertThat(VolumeChange.length(grade, 293).value().orElseThrow().value() * 100)
                .isCloseTo(percent, within(1e-9));
    }

    /** 100Cr6 in oil: centre 64 HRC at 20 mm, 58 at 30, 50 at 40 (steelmaker's card). */
    @ParameterizedTest
    @CsvSource({"20, 64", "30, 58", "40, 50"})
    void bearingSteelThroughTheSection(double mm, double hrc) {
        Quenched q = Quenching.of(
                        Grades.of("52100"),
                        new org.strawblue.core.part.PartShape.RoundBar(mm / 1000, 10 * mm / 1000),
                        Quenchants.of("fast-oil"),
                        ZERO + 845)
                .value()
                .orElseThrow();
        assertThat(q.centre().band().contains(hrc)).isTrue();
    }

    /** C45 in water: hardened 3.5 mm deep at 30 mm (laboratory notes). */
    @Test
    void depthOfMediumCarbonSteel() {
        Quenched q = Quenching.of(
                        Grades.of("1045"),
                        new org.strawblue.core.part.PartShape.RoundBar(0.03, 0.3),
                        Quenchants.of("water"),
                        ZERO + 840)
                .value()
                .orElseThrow();
        assertThat(q.depth().band().contains(0.0035)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"water", "canola oil", "ATF", "Aluminum Plates", "salt water"})
    void quenchesAreFoundByTheWordsPeopleUse(String word) {
        assertThat(Quenchants.find(word).value()).isPresent();
    }

    @Test
    void anUnknownQuenchGetsTheNearest() {
        assertThat(Quenchants.find("wattr").findings().get(0).remedy().template())
                .contains("water");
        assertThat(Quenchants.find("zzzzzzz").findings().get(0).remedy().template())
                .contains("brine");
    }
}
