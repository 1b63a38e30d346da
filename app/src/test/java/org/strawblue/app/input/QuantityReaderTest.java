package org.strawblue.app.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/** Expected values: 1 in = 25.4 mm and 1 lb = 0.45359237 kg exactly (1959 agreement); °F by NIST SP 811. */
class QuantityReaderTest {

    static Reading<org.strawblue.core.quantity.Quantity> read(String text, Dimension dimension, UnitSystem units) {
        return QuantityReader.quantity(text, Expectation.of(dimension, units));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '$',
            value = {
                "3/8 in; LENGTH; 0.009525",
                "1 1/8\"; LENGTH; 0.028575",
                "1-1/8 in; LENGTH; 0.028575",
                "1 - 1/8 in; LENGTH; 0.028575",
                "½ in; LENGTH; 0.0127",
                "1½″; LENGTH; 0.0381",
                "1 ⅜ in.; LENGTH; 0.034925",
                "3⁄8”; LENGTH; 0.009525",
                ".375\"; LENGTH; 0.009525",
                "0.5 thou; LENGTH; 0.0000127",
                "6 mm; LENGTH; 0.006",
                "6mm; LENGTH; 0.006",
                "6 MM; LENGTH; 0.006",
                "6; LENGTH; 0.006",
                "ø12 mm; LENGTH; 0.012",
                "dia. 12 mm; LENGTH; 0.012",
                "12,7 mm; LENGTH; 0.0127",
                "0,250 in; LENGTH; 0.00635",
                "1,234.5 mm; LENGTH; 1.2345",
                "1.234,5 mm; LENGTH; 1.2345",
                "1 ft 2 in; LENGTH; 0.3556",
                "25 µm; LENGTH; 0.000025",
                "530 F; TEMPERATURE; 549.816666667",
                "530°F; TEMPERATURE; 549.816666667",
                "530 ° F; TEMPERATURE; 549.816666667",
                "530 degrees F; TEMPERATURE; 549.816666667",
                "530 deg f; TEMPERATURE; 549.816666667",
                "204 ºC; TEMPERATURE; 477.15",
                "204; TEMPERATURE; 477.15",
                "-40 F; TEMPERATURE; 233.15",
                "−40 °C; TEMPERATURE; 233.15",
                "500 K; TEMPERATURE; 500",
                "45 min; TIME; 2700",
                "45 mins.; TIME; 2700",
                "1 h 30 min; TIME; 5400",
                "1h30; TIME; 5400",
                "1 hr and 30 minutes; TIME; 5400",
                "1:30 h; TIME; 5400",
                "1:30 min; TIME; 90",
                "0:01:30; TIME; 90",
                "1 1/2 hours; TIME; 5400",
                "2 lbf; FORCE; 8.896443230521",
                "10 lb; FORCE; 44.482216152605",
                "2 lb 3 oz; FORCE; 9.730484783382",
                "600 g; FORCE; 5.88399",
                "60 HRC; HARDNESS; 60",
                "HRC 60; HARDNESS; 60",
                "Rc60; HARDNESS; 60",
                "60; HARDNESS; 60",
                "1e-3 m; LENGTH; 0.001",
                "7 1/2; NUMBER; 7.5",
                "7.5 coils; NUMBER; 7.5",
                "0.9 %; FRACTION; 0.009",
                "30°; ANGLE; 0.5235987756",
            })
    void readsEveryTradeForm(String text, Dimension dimension, double si) {
        assertThat(read(text, dimension, UnitSystem.METRIC).found())
                .as(() -> text + ": " + read(text, dimension, UnitSystem.METRIC))
                .hasValueSatisfying(q -> assertThat(q.si()).isCloseTo(si, within(1e-7 * Math.max(1e-3, Math.abs(si)))));
    }

    @Test
    void aBareNumberIsInTheUnitsOfTheJob() {
        assertThat(read("3/8", Dimension.LENGTH, UnitSystem.INCH)
                        .found()
                        .orElseThrow()
                        .si())
                .isCloseTo(0.009525, within(1e-12));
        assertThat(read("400", Dimension.TEMPERATURE, UnitSystem.INCH)
                        .found()
                        .orElseThrow()
                        .si())
                .isCloseTo(477.594, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "58-60 HRC; HARDNESS; 58; 60",
                "58 to 60 HRC; HARDNESS; 58; 60",
                "58…60; HARDNESS; 58; 60",
                "58 HRC – 60 HRC; HARDNESS; 58; 60",
                "HRC 58-60; HARDNESS; 58; 60",
                "between 58 and 60; HARDNESS; 58; 60",
                "60 ± 1 HRC; HARDNESS; 59; 61",
                "60 +/- 1; HARDNESS; 59; 61",
                "about 60; HARDNESS; 59; 61",
                "~60 HRC; HARDNESS; 59; 61",
                "at least 58; HARDNESS; 58; 70",
                "58 HRC min; HARDNESS; 58; 70",
                "58+; HARDNESS; 58; 70",
                "58 HRC or better; HARDNESS; 58; 70",
                "60 max; HARDNESS; 0; 60",
                "up to 60 HRC; HARDNESS; 0; 60",
                "60; HARDNESS; 60; 60",
                "2-3 N; FORCE; 2; 3",
                "204 C ± 5 C; TEMPERATURE; 472.15; 482.15",
                "30 to 45 min; TIME; 1800; 2700",
                "45 min to 1 h; TIME; 2700; 3600",
                "1/4-3/8 in; LENGTH; 0.00635; 0.009525",
            })
    void readsBands(String text, Dimension dimension, double low, double high) {
        Reading<Band> read = QuantityReader.band(text, Expectation.of(dimension, UnitSystem.METRIC));
        assertThat(read.found()).as(() -> text + ": " + read).hasValueSatisfying(b -> {
            assertThat(b.low()).isCloseTo(low, within(1e-9 + 1e-9 * low));
            assertThat(b.high()).isCloseTo(high, within(1e-9 + 1e-9 * high));
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            nullValues = "-",
            value = {
                "6 mm h6; 6; -; -; h6",
                "6 H7; 6; -; -; H7",
                "6h6; 6; -; -; h6",
                "6 h6 mm; 6; -; -; h6",
                "6.00 +0/-0.01 mm; 6; 5.99; 6; -",
                "6 +0 -0.01; 6; 5.99; 6; -",
                "6 -0.01/-0.02; 6; 5.98; 5.99; -",
                "0.2500 +0.0002/-0 in; 6.35; 6.35; 6.35508; -",
                "1/4 in +0/-0.5 thou; 6.35; 6.3373; 6.35; -",
                "6 ±0.01 mm; 6; 5.99; 6.01; -",
                "5.99 to 6.00 mm; 5.995; 5.99; 6; -",
                "6 mm; 6; -; -; -",
            })
    void readsSizesWithLimits(String text, double nominal, Double low, Double high, String fit) {
        Reading<Size> read = QuantityReader.size(text, Expectation.of(Dimension.LENGTH, UnitSystem.METRIC));
        assertThat(read.found()).as(() -> text + ": " + read).hasValueSatisfying(s -> {
            assertThat(s.nominal() * 1e3).isCloseTo(nominal, within(1e-9));
            assertThat(s.fit().orElse(null)).isEqualTo(fit);
            assertThat(s.limits().isPresent()).isEqualTo(low != null);
            s.limits().ifPresent(l -> {
                assertThat(l.low() * 1e3).isCloseTo(low, within(1e-9));
                assertThat(l.high() * 1e3).isCloseTo(high, within(1e-9));
            });
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "don't know",
                "don’t know",
                "dont know",
                "Don't Know",
                "unknown",
                "?",
                "not sure",
                "dk",
                "DK",
                "no idea",
                "tbd",
                "do not know",
                "don't-know",
                "n/k"
            })
    void understandsThatNobodyKnows(String text) {
        assertThat(read(text, Dimension.LENGTH, UnitSystem.METRIC)).isInstanceOf(Reading.NotKnown.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '$',
            value = {
                "1,000 mm; LENGTH; 0; 5; It could mean 1000 or 1.000; ",
                "6 mmm; LENGTH; 2; 5; The units known here; mm",
                "6 kg; LENGTH; 2; 4; does not measure this; ",
                "3/0 in; LENGTH; 0; 3; divided by 0; ",
                "six mm; LENGTH; 0; 3; Begin with the number; ",
                "45; TIME; 0; 2; Write the unit too; ",
                "1:30; TIME; 0; 4; hours or minutes; ",
                "-300 C; TEMPERATURE; 0; 6; Check the number; ",
                "-500 F; TEMPERATURE; 0; 6; Check the number; ",
                "1e9 m; LENGTH; 0; 5; Check the number; ",
                "1e999 m; LENGTH; 0; 5; too large; ",
                "600 HRC; HARDNESS; 0; 7; Check the number; ",
                "6 mm 7; LENGTH; 5; 6; The units known here; ",
                "1.2.3 mm; LENGTH; 0; 5; one decimal point; ",
                "6 mm and a bit; LENGTH; 5; 14; The units known here; ",
                "30 minuets; TIME; 3; 10; The units known here; minutes",
                "NaN; LENGTH; 0; 3; Begin with the number; ",
                "Infinity mm; LENGTH; 0; 8; Begin with the number; ",
            })
    void tellsWhatIsWrongAndWhere(String text, Dimension dimension, int from, int to, String remedy, String nearest) {
        assertThat(read(text, dimension, UnitSystem.METRIC)).isInstanceOfSatisfying(Reading.Fault.class, f -> {
            assertThat(f.from()).as(text).isEqualTo(from);
            assertThat(f.to()).as(text).isEqualTo(to);
            assertThat(f.remedy()).contains(remedy);
            assertThat(f.nearest().orElse(null)).isEqualTo(nearest);
            assertThat(f.expected()).isNotBlank();
        });
    }
}
