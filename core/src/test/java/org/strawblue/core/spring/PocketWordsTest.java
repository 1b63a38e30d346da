package org.strawblue.core.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/** Preload screws, feelings for forces, heat and wet: what a pocket says beyond its sizes. */
class PocketWordsTest {

    private static final Pocket PLAIN = Drawer.pocket(9.6, 4, 26, 8, new double[] {5, 10}, new double[] {12, 25});

    /** Pitches of ISO 261 coarse threads and of UNC: common practice; inch pitches are 25.4 mm over the threads per inch. */
    @ParameterizedTest
    @CsvSource({
        "M6, 1.0",
        "m6, 1.0",
        "M6x0.75, 0.75",
        "M10 x 1.25, 1.25",
        "1/4-20, 1.27",
        "10-32 UNF, 0.79375",
        "1/4-20 UNC, 1.27",
        "M3, 0.5",
    })
    void threadsHaveTheirPitch(String thread, double pitch) {
        assertThat(PreloadScrew.of(thread).orElseThrow().pitch() * 1000).isCloseTo(pitch, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"bolt", "M", "M61", "1/4-0", "''"})
    void whatIsNoThreadIsAbsent(String thread) {
        assertThat(PreloadScrew.of(thread)).isEmpty();
    }

    /** A turn gives rate times pitch: 1.5 N/mm and M6 give 1.5 N. */
    @Test
    void aTurnGivesRateTimesPitch() {
        Estimate rate = Estimate.of(Dimension.STIFFNESS, 1500, 1400, 1600);
        Estimate turn = PreloadScrew.of("M6").orElseThrow().forcePerTurn(rate);
        assertThat(turn.value()).isCloseTo(1.5, within(1e-12));
        assertThat(turn.low()).isCloseTo(1.4, within(1e-12));
    }

    /** Firmer words mean more newtons and leave no gap between them. Common practice. */
    @Test
    void feelingsRise() {
        double last = 0;
        for (String feel : List.of("feather light", "light by thumb", "firm by thumb", "stiff by thumb", "two hands")) {
            Band band = Feel.force(feel).orElseThrow();
            assertThat(band.low()).isGreaterThan(last * 0.99);
            assertThat(band.high()).isGreaterThan(band.low());
            last = band.low();
        }
        assertThat(Feel.force("purple")).isEmpty();
    }

    private static List<String> whats(Pocket pocket) {
        return PocketCheck.findings(pocket).stream()
                .map(Finding::what)
                .map(p -> p.template())
                .toList();
    }

    @Test
    void aScrewAndWetAreTold() {
        assertThat(whats(PLAIN.with(PreloadScrew.of("M6"), true)))
                .anyMatch(t -> t.contains("turn of the M6 screw"))
                .anyMatch(t -> t.contains("gets wet"));
        assertThat(whats(PLAIN)).noneMatch(t -> t.contains("screw") || t.contains("wet"));
    }

    @Test
    void whatIsTooHotForAnyWireIsRefused() {
        Pocket hot = new Pocket(
                "oven",
                OptionalDouble.of(0.01),
                OptionalDouble.empty(),
                0.03,
                0.005,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(900));
        assertThat(PocketCheck.findings(hot)).anyMatch(Finding.Stop.class::isInstance);
    }

    /** Trade page: music wire loses more than a tenth at 150 °C and about half at 200 °C; colder never loses more. */
    @Test
    void warmSpringsSlacken() {
        SpringMaterial music = SpringMaterial.of(SpringMaterial.Key.MUSIC);
        assertThat(loss(music, 150, 1).low()).isCloseTo(0.10, within(1e-9));
        assertThat(loss(music, 200, 1).high()).isGreaterThanOrEqualTo(0.5);
        assertThat(loss(music, 150, 0.5).high()).isCloseTo(loss(music, 150, 1).high() / 2, within(1e-12));
        assertThat(loss(music, -10, 1).value()).isEqualTo(loss(music, 20, 1).value());
        for (SpringMaterial material : SpringMaterial.all()) {
            double last = -1;
            for (double t = 20; t <= 90; t += 10) {
                double now = loss(material, t, 1).value();
                assertThat(now).isGreaterThanOrEqualTo(last);
                last = now;
            }
        }
        Answer<Estimate> beyond = Relaxation.loss(music, 273.15 + 400, 1);
        assertThat(beyond.value()).isEmpty();
        assertThat(beyond.stopped()).isTrue();
    }

    private static Estimate loss(SpringMaterial material, double celsius, double share) {
        return Relaxation.loss(material, 273.15 + celsius, share).value().orElseThrow();
    }

    /** With no amplitude only the mean counts; the parabola promises more than the straight line wherever both are between. */
    @Test
    void fatigueLawsAgreeAtTheEnds() {
        FatigueLaw goodman = new GoodmanFatigue();
        FatigueLaw gerber = new GerberFatigue();
        double r = 2e9;
        assertThat(goodman.safety(0, Zimmerli.shearStrength(r), r)).isCloseTo(1, within(1e-12));
        assertThat(gerber.safety(0, Zimmerli.shearStrength(r), r)).isCloseTo(1, within(1e-12));
        assertThat(goodman.safety(Zimmerli.endurance(r), 0, r)).isCloseTo(1, within(1e-12));
        assertThat(gerber.safety(Zimmerli.enduranceByParabola(r), 0, r)).isCloseTo(1, within(1e-12));
        assertThat(new SoderbergFatigue(0.22, 0.45).safety(0, 0.45 * r, r)).isCloseTo(1, within(1e-12));
        // Zimmerli's own point lies on every line drawn through it
        assertThat(goodman.safety(241e6, 379e6, r)).isCloseTo(1, within(1e-6));
        assertThat(gerber.safety(241e6, 379e6, r)).isCloseTo(1, within(1e-6));
    }
}
