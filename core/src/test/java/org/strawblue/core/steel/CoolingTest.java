package org.strawblue.core.steel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.part.PartShape;

class CoolingTest {

    private static final double HOT = 1073;

    static Stream<Long> seeds() {
        return new SplittableRandom(20261125).longs(40).boxed();
    }

    /** The exact series of the long cylinder (standard heat-transfer texts). */
    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.1, 0.5, 1, 3, 10, 50})
    void agreesWithTheSeriesOfTheLongCylinder(double biot) {
        double radius = 0.006;
        Film film = new Film(new double[] {300}, new double[] {biot * UndercooledAustenite.CONDUCTIVITY / radius});
        Cooling cooling = Cooling.of(new Cooling.Body(true, radius), film, 1, 1100, 300);
        double fourier = cooling.atCentre() * UndercooledAustenite.DIFFUSIVITY / (radius * radius);
        assertThat(fourier / Grossmann.halfTemperature(biot)).isBetween(0.99, 1.01);
    }

    /** A plate so thin that it is of one temperature: t = ρ c (V/S)/h · ln 2. */
    @Test
    void agreesWithTheLumpedPlate() {
        Cooling cooling = Cooling.of(
                new Cooling.Body(false, 0.0001), new Film(new double[] {300}, new double[] {50}), 1, 1100, 300);
        double exact = UndercooledAustenite.CAPACITY * 0.0001 / 50 * Math.log(2);
        assertThat(cooling.atCentre() / exact).isCloseTo(1, within(0.02));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aFiercerQuenchHardensDeeperAndAThickerPartLess(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Grade> steels =
                Grades.all().stream().filter(g -> g.madeFor().isPresent()).toList();
        Grade grade = steels.get(random.nextInt(steels.size()));
        Quenchant bath = Quenchants.all().get(random.nextInt(Quenchants.all().size()));
        double d = random.nextDouble(0.002, 0.06);
        double hot = grade.found(Property.AUSTENITISE).orElseThrow().value();
        Hardenability steel = Hardenability.of(grade).value().orElseThrow();
        Cooling weak = Cooling.of(new Cooling.Body(true, d / 2), bath.film(), 0.7, hot, 300);
        Cooling strong = Cooling.of(new Cooling.Body(true, d / 2), bath.film(), 1.4, hot, 300);
        double critical = steel.critical().value();
        assertThat(strong.depthWithin(critical)).isGreaterThanOrEqualTo(weak.depthWithin(critical) - 1e-12);
        Quenched thin = quench(grade, bath, d, hot);
        Quenched thick = quench(grade, bath, 1.4 * d, hot);
        assertThat(thick.centre().value()).isLessThanOrEqualTo(thin.centre().value() + 1e-6);
        assertThat(thick.through()).isLessThanOrEqualTo(thin.through() + 1e-9);
    }

    private static Quenched quench(Grade grade, Quenchant bath, double d, double hot) {
        return Quenching.of(grade, new PartShape.RoundBar(d, 10 * d), bath, hot)
                .value()
                .orElseThrow();
    }

    /** Known limits of the equal body: a long square bar cools about as a round one of its side; a plate as itself. */
    @Test
    void bodiesStandForShapes() {
        Cooling.Body square = Bodies.of(new PartShape.SquareBar(0.01, 1));
        assertThat(square.round()).isTrue();
        assertThat(square.size()).isBetween(0.005, 0.0054);
        Cooling.Body plate = Bodies.of(new PartShape.Flat(0.003, 0.1, 0.1));
        assertThat(plate.round()).isFalse();
        assertThat(plate.size()).isBetween(0.0014, 0.0015);
        Cooling.Body disc = Bodies.of(new PartShape.RoundBar(0.05, 0.005));
        assertThat(disc.round()).isFalse();
        assertThat(disc.size()).isBetween(0.0021, 0.0025);
        Cooling.Body wide = Bodies.of(new PartShape.Tube(0.06, 0.05, 0.2));
        Cooling.Body narrow = Bodies.of(new PartShape.Tube(0.014, 0.004, 0.2));
        assertThat(wide.size()).isCloseTo(0.0025, within(0.0001));
        assertThat(narrow.size()).isGreaterThan(wide.size());
        assertThat(Bodies.of(new PartShape.Flat(0.01, 0.012, 0.1)).round()).isTrue();
    }

    @Test
    void theDepthGrowsWithTheTimeAllowed() {
        Cooling cooling =
                Cooling.of(new Cooling.Body(true, 0.01), Quenchants.of("water").film(), 1, HOT, 300);
        assertThat(cooling.depthWithin(cooling.atSurface() / 2)).isBetween(0.0, 0.001);
        assertThat(cooling.depthWithin((cooling.atSurface() + cooling.atCentre()) / 2))
                .isBetween(0.001, 0.01);
        assertThat(cooling.depthWithin(cooling.atCentre() * 2)).isEqualTo(0.01);
    }
}
