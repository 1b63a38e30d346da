package org.strawblue.core.spring.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.MeasurementErrors;

/** The standards' tables cell by cell where the cases do not, and their limits carried through to force. */
class ToleranceTest {

    private static final Coil DRAWN = Coil.of(0.001, 0.009, 0.03, 10, Ends.both(EndType.CLOSED_GROUND));

    /** EN 15800: each class is wider than the one before, and wider coils of one class are wider too. */
    @Test
    void classesWiden() {
        for (double mean = 0.0008; mean < 0.06; mean *= 1.3) {
            for (double index = 4; index <= 20; index += 2) {
                double wire = mean / index;
                double one = CoilDiameterClass.ONE.deviation(mean, wire).orElseThrow();
                double two = CoilDiameterClass.TWO.deviation(mean, wire).orElseThrow();
                double three = CoilDiameterClass.THREE.deviation(mean, wire).orElseThrow();
                assertThat(one).isLessThanOrEqualTo(two);
                assertThat(two).isLessThanOrEqualTo(three);
            }
        }
        assertThat(CoilDiameterClass.ONE.deviation(0.01, 0.0003)).isEmpty();
    }

    /** Handbook table 8: a corner, a middle between rows, and the factor for ends left unground. */
    @Test
    void freeLengthRunsBetweenPrintedRows() {
        assertThat(FreeLengthTolerance.share(0.5, 4)).isCloseTo(0.010, within(1e-12));
        assertThat(FreeLengthTolerance.share(3, 8)).isCloseTo(0.019, within(1e-12));
        assertThat(FreeLengthTolerance.share(40, 30)).isCloseTo(0.040, within(1e-12));
        Coil rough = Coil.of(0.001, 0.009, 0.03, 10, Ends.both(EndType.CLOSED));
        assertThat(FreeLengthTolerance.of(rough)).isCloseTo(1.7 * FreeLengthTolerance.of(DRAWN), within(1e-6));
    }

    /** Handbook table 11: printed cells, one between, none beyond. */
    @Test
    void loadRunsBetweenPrintedRows() {
        double inch = 0.0254;
        assertThat(LoadTolerance.share(0.005 * inch, 0.05 * inch).orElseThrow()).isCloseTo(0.12, within(1e-9));
        assertThat(LoadTolerance.share(0.030 * inch, 0.40 * inch).orElseThrow()).isCloseTo(0.095, within(1e-9));
        assertThat(LoadTolerance.share(0.010 * inch, 0.35 * inch).orElseThrow()).isCloseTo(0.0525, within(1e-9));
        assertThat(LoadTolerance.share(0.010 * inch, 2 * inch)).isEmpty();
    }

    /** A spring made to a closer class has a narrower rate; the trade's tenth for stock springs lies between. */
    @Test
    void limitsAreCarriedThroughToTheRate() {
        double close = rateError(CoilDiameterClass.ONE);
        double wide = rateError(CoilDiameterClass.THREE);
        assertThat(close).isLessThan(wide);
        assertThat(MadeToStandard.stockRate()).isBetween(close, wide * 1.5);
        assertThat(MadeToStandard.wire(0.0005)).isCloseTo(8e-6, within(1e-12));
        assertThat(MadeToStandard.wire(0.009)).isCloseTo(30e-6, within(1e-12));
    }

    private static double rateError(CoilDiameterClass quality) {
        MeasurementErrors errors = MadeToStandard.errors(DRAWN, quality);
        MeasuredSpring made = new MeasuredSpring(
                "made",
                0,
                DRAWN.wire(),
                DRAWN.outside(),
                DRAWN.free(),
                DRAWN.total(),
                Optional.of(DRAWN.ends()),
                Optional.of("music wire"),
                errors,
                1);
        Estimate rate = CompressionSpring.of(made, Optional.empty(), OptionalDouble.empty())
                .rate();
        return (rate.high() - rate.low()) / 2 / rate.value();
    }
}
