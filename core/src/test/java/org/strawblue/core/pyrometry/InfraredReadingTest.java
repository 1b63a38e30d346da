package org.strawblue.core.pyrometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.SimpsonIntegrator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.colour.Planck;
import org.strawblue.core.estimate.Estimate;

class InfraredReadingTest {

    private static final double SHOP = 295.15;
    private static final InfraredGun GUN = new InfraredGun(0.95);

    private static Estimate reading(Surface surface, double kelvin) {
        return new InfraredReading(GUN, surface, SHOP).at(kelvin).value().orElseThrow();
    }

    /** Planck's law over 8 to 14 µm, integrated by Simpson's rule and solved for the reading: apart from our law. */
    private static double byPlanck(double kelvin, double emissivity, double set) {
        double seen = emissivity * band(kelvin) + (set - emissivity) * band(SHOP);
        UnivariateFunction difference = t -> band(t) * set - seen;
        return new BrentSolver(1e-9).solve(200, difference, 200, 1500);
    }

    private static double band(double kelvin) {
        return new SimpsonIntegrator(1e-10, 1e-12, 5, 30)
                .integrate(100000, l -> Planck.radiance(l, kelvin) * 1e-6, 8e-6, 14e-6);
    }

    static Stream<Arguments> surfacesAndTemperatures() {
        return Stream.of(Surface.values())
                .flatMap(s -> Stream.of(323.15, 473.15, 543.15, 673.15, 1053.15).map(t -> Arguments.of(s, t)));
    }

    @ParameterizedTest
    @MethodSource("surfacesAndTemperatures")
    void agreesWithPlancksLaw(Surface surface, double kelvin) {
        double expected = byPlanck(kelvin, surface.emissivity().value(), 0.95);
        assertThat(reading(surface, kelvin).value()).isCloseTo(expected, within(0.5));
    }

    @ParameterizedTest
    @EnumSource
    void thereAndBack(Surface surface) {
        InfraredReading gun = new InfraredReading(GUN, surface, SHOP);
        double read = gun.at(543.15).value().orElseThrow().value();
        assertThat(gun.truth(read).value().orElseThrow().value()).isCloseTo(543.15, within(1e-6));
    }

    @Test
    void brightSteelReadsFarTooLowAndTellsLittle() {
        Estimate bright = reading(Surface.BRIGHT, 543.15);
        assertThat(bright.high()).isLessThan(373.15);
        Estimate truth = new InfraredReading(GUN, Surface.BRIGHT, SHOP)
                .truth(bright.value())
                .value()
                .orElseThrow();
        assertThat(truth.high() - truth.low()).isGreaterThan(80);
        Estimate paint = new InfraredReading(GUN, Surface.PAINTED, SHOP)
                .truth(543.15)
                .value()
                .orElseThrow();
        assertThat(paint.high() - paint.low()).isLessThan(25);
    }

    @Test
    void aGunSetToTheSurfaceReadsTrue() {
        InfraredReading gun = new InfraredReading(new InfraredGun(0.10), Surface.BRIGHT, SHOP);
        assertThat(gun.at(500).value().orElseThrow().value()).isCloseTo(500, within(1e-9));
    }

    @Test
    void outsideItsRangeItIsRefused() {
        InfraredReading gun = new InfraredReading(GUN, Surface.OXIDISED, SHOP);
        assertThat(gun.at(1200).stopped()).isTrue();
        assertThat(gun.truth(1200).stopped()).isTrue();
        assertThat(gun.truth(SHOP).stopped()).isTrue();
    }
}
