package org.strawblue.core.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.source.Bibliography;

class StrengthTest {

    private static double least(String table, double millimetres) {
        return StrengthTable.of(table).at(millimetres / 1000).orElseThrow().least() / 1e6;
    }

    /** EN 10270-1 SM: 1980 − 740 lg d, from memory; the printed rows are rounded to 10 MPa. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.42, 0.5, 0.77, 1.0, 1.15, 1.6, 2.0, 2.9, 4.0, 6.3, 8.0, 12, 15, 18, 20})
    void patentedWireFollowsTheStandardsFormula(double wire) {
        assertThat(least("en-10270-1-sm", wire)).isCloseTo(1980 - 740 * Math.log10(wire), within(10.0));
    }

    /** Printed in ksi at sizes in inches. */
    @ParameterizedTest
    @CsvSource({"astm-a228, 0.080, 282", "astm-a228, 0.004, 439", "astm-a228, 0.250, 230", "astm-a227-1, 0.020, 283"})
    void readsInchRows(String table, double inch, double ksi) {
        assertThat(least(table, inch * 25.4) / 6.894757).isCloseTo(ksi, within(0.1));
    }

    /** Textbook fits against the ASTM minimum: 3 % low to 7 % high. */
    @ParameterizedTest
    @CsvSource({
        "MUSIC, astm-a228, 0.5",
        "MUSIC, astm-a228, 1",
        "MUSIC, astm-a228, 2",
        "MUSIC, astm-a228, 6.35",
        "HARD_DRAWN, astm-a227-1, 1",
        "HARD_DRAWN, astm-a227-1, 3",
        "OIL_TEMPERED, astm-a229-1, 1.5",
        "OIL_TEMPERED, astm-a229-1, 5",
        "STAINLESS, astm-a313-302, 1"
    })
    void theTextbookFitStaysNearTheTable(SpringMaterial.Key material, String table, double wire) {
        double fit = new PowerStrength(material).at(wire / 1000).orElseThrow().least() / 1e6;
        assertThat(fit / least(table, wire)).isBetween(0.965, 1.07);
    }

    @Test
    void stepsHoldDownToTheRowBefore() {
        assertThat(least("en-10270-3-14310-ns", 1.01)).isEqualTo(1850);
        assertThat(least("en-10270-3-14310-ns", 1.25)).isEqualTo(1850);
        assertThat(least("en-10270-3-14310-ns", 1.0)).isEqualTo(1900);
    }

    @Test
    void doesNotGuessBeyondTheTable() {
        assertThat(StrengthTable.of("astm-a228").at(0.0065)).isEmpty();
        assertThat(StrengthTable.of("astm-a228").at(0.0001)).isEmpty();
        assertThat(new PowerStrength(SpringMaterial.Key.MUSIC).at(0.02)).isEmpty();
        assertThatThrownBy(() -> StrengthTable.of("astm-none")).hasMessageContaining("astm-a228");
    }

    @Test
    void thickerWireIsNeverStrongerInAnyTable() {
        for (String key : StrengthTable.keys()) {
            double last = Double.POSITIVE_INFINITY;
            for (double wire = 0.0002; wire < 0.012; wire *= 1.02) {
                Optional<Strength> strength = StrengthTable.of(key).at(wire);
                if (strength.isPresent()) {
                    assertThat(strength.get().least()).as(key + " " + wire).isLessThanOrEqualTo(last);
                    last = strength.get().least();
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "music wire, MUSIC",
        "PIANO WIRE, MUSIC",
        "A228, MUSIC",
        "hard drawn, HARD_DRAWN",
        "EN 10270-1 SH, MUSIC",
        "Stainless (302), STAINLESS",
        "phosphor bronze, PHOSPHOR_BRONZE",
        "oil tempered, OIL_TEMPERED",
        "hard-drawn patented, HARD_DRAWN"
    })
    void understandsTheTradesWords(String words, SpringMaterial.Key key) {
        assertThat(SpringMaterial.find(words).orElseThrow().key()).isEqualTo(key);
    }

    @Test
    void takesWordsWholeAndUnknownOnesForNothing() {
        assertThat(SpringMaterial.find("shiny")).isEmpty();
        assertThat(SpringMaterial.find("mumble")).isEmpty();
        assertThat(SpringMaterial.all()).hasSize(SpringMaterial.Key.values().length);
    }

    /** Textbook: 0.45 of the strength for music wire; unknown wire gets the weakest likely one. */
    @Test
    void allowsWhatTheWeakestRowAllows() {
        AllowableStress music =
                SpringMaterial.of(SpringMaterial.Key.MUSIC).allowable(0.001).orElseThrow();
        AllowableStress unknown =
                SpringMaterial.of(SpringMaterial.Key.UNKNOWN).allowable(0.001).orElseThrow();
        assertThat(music.stress()).isCloseTo(0.45 * music.strength(), Percentage.withPercentage(1e-9));
        assertThat(unknown.stress()).isLessThan(0.8 * music.stress());
        assertThat(music.bases()).allMatch(b -> Bibliography.find(b.source()).isPresent());
        assertThat(SpringMaterial.of(SpringMaterial.Key.MUSIC).allowable(0.05)).isEmpty();
    }

    /** Recalled textbook example 10-4: S_ut 284.1 ksi gives 49.2 ksi; the mean falls to 0 at that amplitude. */
    @Test
    void enduranceIsZimmerlis() {
        double ksi = 6.894757e6;
        double strength = 284.1 * ksi;
        assertThat(Zimmerli.endurance(strength) / ksi).isCloseTo(49.2, Percentage.withPercentage(1.5));
        assertThat(Zimmerli.greatestMean(Zimmerli.endurance(strength), strength))
                .isCloseTo(0, within(1.0));
        assertThat(Zimmerli.greatestMean(241e6, strength)).isCloseTo(379e6, Percentage.withPercentage(0.1));
    }
}
