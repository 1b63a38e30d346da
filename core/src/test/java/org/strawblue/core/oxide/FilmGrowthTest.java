package org.strawblue.core.oxide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.hipparchus.util.ContinuedFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.history.Trace;

class FilmGrowthTest {

    private static final double BARE = FilmGrowth.airFormed();
    private static final GrowthLaw CENTRAL = GrowthLaws.central();

    static Stream<Trace> traces() {
        SplittableRandom random = new SplittableRandom(230);
        return Stream.generate(() -> {
                    int n = 2 + random.nextInt(8);
                    double[] s = new double[n];
                    double[] k = new double[n];
                    for (int i = 0; i < n; i++) {
                        s[i] = i == 0 ? 0 : s[i - 1] + 1 + 3000 * random.nextDouble();
                        k[i] = 293 + 330 * random.nextDouble();
                    }
                    return new Trace(s, k);
                })
                .limit(40);
    }

    /** ∫exp(−a/T)dT = T e^{−a/T} − a E₁(a/T), E₁ by its continued fraction: closed form, apart from the quadrature. */
    private static double rampClosedForm(double from, double to, double seconds, GrowthLaw law) {
        double a = law.activation() / 8.314462618;
        double integral = primitive(to, a) - primitive(from, a);
        return seconds / (to - from) * integral * Math.exp(a / law.referenceTemperature());
    }

    private static double primitive(double kelvin, double a) {
        double x = a / kelvin;
        return kelvin * Math.exp(-x) - a * exponentialIntegral(x);
    }

    private static double exponentialIntegral(double x) {
        ContinuedFraction fraction = new ContinuedFraction() {
            @Override
            protected double getA(int n, double at) {
                return at + 2 * n + 1;
            }

            @Override
            protected double getB(int n, double at) {
                return -(double) n * n;
            }
        };
        return Math.exp(-x) / fraction.evaluate(x, 1e-15);
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 60, 600, 7200})
    void aRampAgreesWithTheExponentialIntegral(double seconds) {
        Trace ramp = Trace.ramp(400, 590, seconds);
        double expected = rampClosedForm(400, 590, seconds, CENTRAL);
        assertThat(FilmGrowth.equivalentSeconds(ramp, CENTRAL)).isCloseTo(expected, within(1e-10 * expected));
    }

    @Test
    void atTheReferenceTemperatureTimeCountsAsItIs() {
        Trace hold = Trace.hold(CENTRAL.referenceTemperature(), 600);
        assertThat(FilmGrowth.equivalentSeconds(hold, CENTRAL)).isEqualTo(600);
        assertThat(FilmGrowth.thickness(hold, CENTRAL, 0)).isCloseTo(43.7e-9, within(1e-15));
    }

    @ParameterizedTest
    @MethodSource("traces")
    void filmsOnlyGrow(Trace trace) {
        for (String name : new String[] {"central", "A cubic", "B quintic", "parabolic", "logarithmic"}) {
            GrowthLaw law = GrowthLaws.of(name);
            double grown = FilmGrowth.thickness(trace, law, BARE);
            assertThat(grown).as(name).isGreaterThanOrEqualTo(BARE);
            assertThat(FilmGrowth.thickness(trace, law, 2 * BARE)).as(name).isGreaterThan(grown * (1 - 1e-12));
        }
    }

    @ParameterizedTest
    @MethodSource("traces")
    void twoHeatsAfterEachOtherGrowAsOneWholeHistory(Trace trace) {
        double once = FilmGrowth.thickness(trace, CENTRAL, BARE);
        double twice = FilmGrowth.thickness(trace, CENTRAL, once);
        assertThat(FilmGrowth.thickness(trace.then(trace), CENTRAL, BARE)).isCloseTo(twice, within(2e-5 * twice));
    }

    @ParameterizedTest
    @MethodSource("traces")
    void hotterIsThicker(Trace trace) {
        double[] kelvin = trace.kelvin();
        for (int i = 0; i < kelvin.length; i++) {
            kelvin[i] += 5;
        }
        assertThat(FilmGrowth.thickness(new Trace(trace.seconds(), kelvin), CENTRAL, BARE))
                .isGreaterThan(FilmGrowth.thickness(trace, CENTRAL, BARE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"central", "A cubic", "B quintic", "parabolic", "logarithmic"})
    void equivalentTimeIsTheInverseOfThickness(String name) {
        GrowthLaw law = GrowthLaws.of(name);
        double grown = law.thickness(BARE, 321);
        assertThat(law.equivalentSeconds(BARE, grown)).isCloseTo(321, within(1e-8));
        assertThat(law.basis().source()).isEqualTo("strawblue");
    }

    /** On lines of one colour ln t against 1/T has the slope Q/R: the same film by two ways. */
    @Test
    void isocolourLinesHaveTheSlopeOfTheActivation() {
        double hot = 573.15;
        double cool = 473.15;
        double longer = Math.exp(CENTRAL.activation() / 8.314462618 * (1 / cool - 1 / hot));
        double quick = FilmGrowth.thickness(Trace.hold(hot, 60), CENTRAL, BARE);
        assertThat(FilmGrowth.thickness(Trace.hold(cool, 60 * longer), CENTRAL, BARE))
                .isCloseTo(quick, within(1e-9 * quick));
    }

    @Test
    void anUnknownLawIsRefusedByName() {
        assertThatThrownBy(() -> GrowthLaws.of("linear")).hasMessageContaining("linear");
    }

    @Test
    void theRivalsAreTwo() {
        assertThat(GrowthLaws.rivals()).extracting(GrowthLaw::name).containsExactly("A cubic", "B quintic");
    }
}
