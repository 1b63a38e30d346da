package org.strawblue.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Units;

class AmountWriterTest {

    private static final AmountWriter METRIC = new AmountWriter(UnitSystem.METRIC);
    private static final AmountWriter INCH = new AmountWriter(UnitSystem.INCH);

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            TEMPERATURE           | °F    | 400     | 204 °C (400 °F)   | 400 °F (204 °C)
            TEMPERATURE           | °C    | 203.87  | 204 °C (399 °F)   | 399 °F (204 °C)
            TEMPERATURE           | °C    | -80     | −80 °C (−112 °F)  | −112 °F (−80 °C)
            TEMPERATURE_DIFFERENCE| °C    | 6       | 6 °C (11 °F)      | 11 °F (6 °C)
            LENGTH                | mm    | 0       | 0 mm              | 0 in
            LENGTH                | mm    | 6       | 6 mm              | 0.236 in
            LENGTH                | in    | 0.375   | 9.525 mm          | 0.375 in
            LENGTH                | mm    | 23.4567 | 23.46 mm          | 0.923 in
            LENGTH                | mm    | 12.006  | 12.006 mm         | 0.473 in
            LENGTH                | thou  | 0.5     | 0.013 mm          | 0.5 thou
            LENGTH                | mm    | 0.8     | 0.8 mm            | 0.0315 in
            LENGTH                | nm    | 46.4    | 46 nm             | 46 nm
            FORCE                 | N     | 8.9     | 8.9 N             | 2 lbf
            FORCE                 | lbf   | 2.25    | 10 N              | 2.25 lbf
            STIFFNESS             | N/mm  | 1.2     | 1.2 N/mm          | 6.85 lbf/in
            STRESS                | MPa   | 812.7   | 813 MPa           | 118 ksi
            TIME                  | h     | 1       | 1 h               | 1 h
            TIME                  | min   | 45      | 45 min            | 45 min
            TIME                  | s     | 8       | 8 s               | 8 s
            TIME                  | min   | 90      | 1 h 30 min        | 1 h 30 min
            TIME                  | s     | 2.43    | 2.4 s             | 2.4 s
            HARDNESS              | HRC   | 59.81   | 60 HRC            | 60 HRC
            FRACTION              | %     | 7.531  | 7.5 %             | 7.5 %
            FRACTION              | %     | 0.18    | 0.18 %            | 0.18 %
            NUMBER                | 1     | 8.5     | 8.5               | 8.5
            ANGLE                 | °     | 60      | 60°               | 60°
            """)
    void singleNumbers(Dimension dimension, String unit, double value, String metric, String inch) {
        Quantity quantity = new Quantity(dimension, Units.of(dimension, unit).toSi(value));
        assertThat(METRIC.write(quantity)).isEqualTo(metric);
        assertThat(INCH.write(quantity)).isEqualTo(inch);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            TEMPERATURE | °C   | 200    | 210    | 200–210 °C (392–410 °F)
            TEMPERATURE | °F   | 1450   | 1500   | 788–816 °C (1450–1500 °F)
            HARDNESS    | HRC  | 58     | 60     | 58–60 HRC
            HARDNESS    | HRC  | 58     | 60.4   | 58.0–60.5 HRC
            LENGTH      | mm   | 12     | 12.018 | 12.000–12.018 mm
            LENGTH      | mm   | -0.004 | 0.0081 | −0.004 to +0.008 mm
            TIME        | min  | 40     | 50     | 40–50 min
            TIME        | h    | 1      | 2      | 1–2 h
            TIME        | s    | 8      | 12     | 8–12 s
            TIME        | min  | 20     | 130    | 20 min to 2 h 10 min
            FORCE       | N    | 2      | 4      | 2–4 N
            TEMPERATURE | °C   | 200    | 200.1  | 200 °C (392 °F)
            """)
    void bands(Dimension dimension, String unit, double low, double high, String metric) {
        Band band = new Band(
                dimension,
                Units.of(dimension, unit).toSi(low),
                Units.of(dimension, unit).toSi(high));
        assertThat(METRIC.write(band)).isEqualTo(metric);
    }

    @Test
    void estimatesCarryTheirInterval() {
        assertThat(METRIC.write(Estimate.of(Dimension.HARDNESS, 59.9, 58.4, 61.6)))
                .isEqualTo("60 HRC (58.5–61.5)");
        assertThat(METRIC.write(Estimate.of(Dimension.TEMPERATURE, 477.02, 471, 484)))
                .isEqualTo("204 °C (198–211) · 399 °F (388–412)");
        assertThat(METRIC.write(Estimate.of(Dimension.LENGTH, 0.0078, 0.0076, 0.007995)))
                .isEqualTo("7.8 mm (7.6–8.0)");
        assertThat(METRIC.write(Estimate.of(Dimension.TIME, 2700, 2400, 3000))).isEqualTo("45 min (40–50 min)");
        assertThat(METRIC.write(Estimate.of(Dimension.NUMBER, 8, 8, 8))).isEqualTo("8");
    }

    @Test
    void openBandsSaySo() {
        assertThat(METRIC.write(new Band(Dimension.HARDNESS, 60, Double.POSITIVE_INFINITY)))
                .isEqualTo("60 HRC or more");
        assertThat(METRIC.write(new Band(Dimension.FORCE, Double.NEGATIVE_INFINITY, 5)))
                .isEqualTo("up to 5 N");
    }

    @Test
    void sentencesTakeTheReadersUnits() {
        Phrase phrase = Phrase.of("Hold at {} for {}.", Quantity.temperature(477.594), Quantity.time(3600));
        assertThat(INCH.write(phrase)).isEqualTo("Hold at 400 °F (204 °C) for 1 h.");
    }

    @Test
    void everyDimensionCanBePrintedInBothSystems() {
        for (Dimension dimension : Dimension.values()) {
            assertThat(METRIC.write(new Quantity(dimension, 1.5))).isNotBlank();
            assertThat(INCH.write(new Band(dimension, 1.5, 2.5))).isNotBlank();
        }
    }

    @ParameterizedTest
    @MethodSource("locales")
    void theSameInEveryLocale(Locale locale) {
        Locale before = Locale.getDefault();
        Locale.setDefault(locale);
        try {
            assertThat(METRIC.write(Quantity.length(0.0015))).isEqualTo("1.5 mm");
            assertThat(METRIC.write(Quantity.number(12345))).isEqualTo("12345");
        } finally {
            Locale.setDefault(before);
        }
    }

    static Stream<Locale> locales() {
        return Stream.of("de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva").map(Locale::forLanguageTag);
    }

    /** A rounded limit is off by at most half a step, and no step is finer than a hundredth part of the interval. */
    @ParameterizedTest
    @MethodSource("seeds")
    void neverMoreDigitsThanTheIntervalWarrants(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double width = Math.exp(random.nextDouble(Math.log(1e-3), Math.log(1e3)));
        double low = random.nextDouble(0, 1000);
        String text = METRIC.write(new Band(Dimension.NUMBER, low, low + width));
        String[] ends = text.split("–");
        for (String end : ends) {
            int dot = end.indexOf('.');
            double lastDigit = Math.pow(10, dot < 0 ? 0 : -(end.length() - dot - 1));
            assertThat(lastDigit).as(text).isGreaterThanOrEqualTo(Math.min(1, Math.max(width / 81, 0.00099)));
        }
        assertThat(Double.parseDouble(ends[0])).isCloseTo(low, org.assertj.core.data.Offset.offset(width / 2 + 0.001));
    }

    /** Printed numbers stand in the order of the numbers, also where the unit changes on the way. */
    @ParameterizedTest
    @MethodSource("seeds")
    void printedNumbersKeepTheirOrder(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double a = Math.exp(random.nextDouble(Math.log(2e-6), Math.log(2)));
        double b = a * random.nextDouble(1, 1.5);
        for (AmountWriter writer : new AmountWriter[] {METRIC, INCH}) {
            assertThat(read(writer.write(Quantity.length(a))))
                    .isLessThanOrEqualTo(read(writer.write(Quantity.length(b))) * (1 + 1e-9));
        }
    }

    private static double read(String text) {
        String[] parts = text.split(" ");
        return Units.of(Dimension.LENGTH, parts[1]).toSi(Double.parseDouble(parts[0]));
    }

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }
}
