package org.strawblue.core.oxide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ThinFilmTest {

    private static final double GREEN = 550e-9;

    /** Fresnel: glass of 1.5 at 60° reflects 0.0892 of unpolarised light; straight on 0.04 (Hecht, Optics). */
    @Test
    void glass() {
        Index glass = Index.clear(1.5);
        assertThat(ThinFilm.reflectance(GREEN, glass, List.of(), Math.toRadians(60)))
                .isCloseTo(0.08919, within(1e-5));
        assertThat(ThinFilm.reflectance(GREEN, glass, List.of(), 0)).isCloseTo(0.04, within(1e-12));
    }

    /** Brewster: at arctan 1.5 nothing polarised in the plane comes back, and half of the rest remains. */
    @Test
    void brewster() {
        double angle = Math.atan(1.5);
        double s = Math.pow((1 - 1.5 * 1.5) / (1 + 1.5 * 1.5), 2);
        assertThat(ThinFilm.reflectance(GREEN, Index.clear(1.5), List.of(), angle))
                .isCloseTo(s / 2, within(1e-12));
    }

    /** A quarter wave of MgF₂ on glass leaves ((n₀n_s − n²)/(n₀n_s + n²))² = 1.26 % (Hecht, Optics). */
    @Test
    void quarterWave() {
        var layer = new ThinFilm.Layer(Index.clear(1.38), GREEN / (4 * 1.38));
        double expected = Math.pow((1.52 - 1.38 * 1.38) / (1.52 + 1.38 * 1.38), 2);
        assertThat(ThinFilm.reflectance(GREEN, Index.clear(1.52), List.of(layer), 0))
                .isCloseTo(expected, within(1e-12));
    }

    record Stack(Index substrate, Index film, double thickness, double angle) {}

    static Stream<Stack> stacks() {
        SplittableRandom random = new SplittableRandom(1889);
        return Stream.generate(() -> new Stack(
                        new Index(1 + 3 * random.nextDouble(), 4 * random.nextDouble()),
                        new Index(1.2 + 2 * random.nextDouble(), random.nextDouble()),
                        300e-9 * random.nextDouble(),
                        1.4 * random.nextDouble()))
                .limit(50);
    }

    /** Airy's sum for one film, r = (r₀₁ + r₁₂ e^{2iφ})/(1 + r₀₁ r₁₂ e^{2iφ}), written out apart from the matrix. */
    @ParameterizedTest
    @MethodSource("stacks")
    void theMatrixAgreesWithAirysSum(Stack s) {
        Complex film = new Complex(s.film.n(), s.film.k());
        Complex substrate = new Complex(s.substrate.n(), s.substrate.k());
        Complex r01 = Complex.ONE.subtract(film).divide(Complex.ONE.add(film));
        Complex r12 = film.subtract(substrate).divide(film.add(substrate));
        Complex turn = film.multiply(4 * Math.PI * s.thickness / GREEN)
                .multiply(Complex.I)
                .exp();
        Complex r = r01.add(r12.multiply(turn))
                .divide(Complex.ONE.add(r01.multiply(r12).multiply(turn)));
        double airy = r.norm() * r.norm();
        assertThat(ThinFilm.reflectance(GREEN, s.substrate, List.of(new ThinFilm.Layer(s.film, s.thickness)), 0))
                .isCloseTo(airy, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void aLayerCutInTwoReflectsAsOneAndNeverMoreThanAll(Stack s) {
        var whole = List.of(new ThinFilm.Layer(s.film, s.thickness));
        var cut = List.of(new ThinFilm.Layer(s.film, 0.3 * s.thickness), new ThinFilm.Layer(s.film, 0.7 * s.thickness));
        double r = ThinFilm.reflectance(GREEN, s.substrate, whole, s.angle);
        assertThat(ThinFilm.reflectance(GREEN, s.substrate, cut, s.angle)).isCloseTo(r, within(1e-12));
        assertThat(r).isBetween(0.0, 1.0);
    }

    /** Johnson and Christy 1974: n 2.95, k 2.93 near 549 nm, hence R = 0.512. */
    @Test
    void bareIron() {
        double r = ThinFilm.reflectance(549e-9, OpticalConstants.iron().index(549e-9), List.of(), 0);
        assertThat(r).isCloseTo(0.512, within(0.003));
    }

    @Test
    void hematiteIsTheMeanOfItsRays() {
        Index index = OpticalConstants.hematite().index(600e-9);
        assertThat(index.n()).isBetween(2.5, 3.2);
        assertThat(index.k()).isBetween(0.0, 0.5);
    }

    @Test
    void aFilmOfNoThicknessIsBareSteel() {
        assertThat(TemperFilm.standard().reflectance(549e-9, 0)).isCloseTo(0.512, within(0.003));
    }
}
