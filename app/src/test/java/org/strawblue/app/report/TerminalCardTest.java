package org.strawblue.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.job.JobCard;
import org.strawblue.core.job.Step;
import org.strawblue.core.job.UnitSystem;

class TerminalCardTest {

    private static final String ESCAPE = "\u001b";

    @ParameterizedTest
    @ValueSource(ints = {40, 61, 80, 120})
    void noLineIsWiderThanTheScreen(int columns) {
        for (JobCard card : new JobCard[] {SampleCard.plunger(), SampleCard.refused(), SampleCard.hostile()}) {
            assertThat(plain(card, columns).lines()).allMatch(l -> Wrap.length(l) <= columns);
        }
    }

    @Test
    void everyStepLeadsWithItsInstructionInOrder() {
        String text = flat(plain(SampleCard.plunger(), 80));
        int from = 0;
        for (Step step : SampleCard.plunger().steps()) {
            int at = text.indexOf(new AmountWriter(UnitSystem.METRIC).write(step.lead()), from);
            assertThat(at).as(step.lead().template()).isGreaterThanOrEqualTo(from);
            from = at;
        }
    }

    @Test
    void aCautionStandsAtItsStepBeforeTheNumbers() {
        String text = plain(SampleCard.plunger(), 100);
        int harden = text.indexOf(" 2  Harden");
        int danger = text.indexOf("▲ Danger. Hot oil can flash");
        int number = text.indexOf("heat-through before the soak counts");
        assertThat(harden).isPositive().isLessThan(danger);
        assertThat(danger).isLessThan(number);
    }

    @Test
    void numbersOnMemoryAreMarkedAndToldInTheFootnote() {
        String text = plain(SampleCard.plunger(), 100);
        assertThat(text).containsPattern("growth in hardening +0\\.006 mm .* †");
        assertThat(text).containsPattern("hardness as quenched +64 HRC \\(63\\.0–65\\.5\\)\n");
        assertThat(text).contains("From memory: size change of O1.").contains("Assumed: ");
    }

    @Test
    void aRefusalComesFirstWithReasonAndRemedy() {
        String text = flat(plain(SampleCard.refused(), 80));
        assertThat(text).contains("NOT TO BE DONE AS ASKED");
        assertThat(text.indexOf("Stop. This steel cannot reach")).isLessThan(text.indexOf("Pin: mild steel"));
        assertThat(text).contains("→ Make it of O1 or silver steel");
    }

    @Test
    void plainTextHasNoEscapeCodesAndNoneComeInFromTheJobFile() {
        assertThat(plain(SampleCard.plunger(), 80)).doesNotContain(ESCAPE);
        String styled =
                TerminalCard.write(CardView.of(SampleCard.hostile()), UnitSystem.METRIC, new Screen(80, true, true));
        assertThat(styled.replaceAll(ESCAPE + "\\[(?:[012]m|48;2;[0-9;]+m)", ""))
                .doesNotContain(ESCAPE);
        assertThat(styled).doesNotContain(ESCAPE + "[31m").doesNotContain("\u202e");
    }

    @Test
    void coloursAreShownWhereTheTerminalHasThem() {
        String styled =
                TerminalCard.write(CardView.of(SampleCard.plunger()), UnitSystem.METRIC, new Screen(80, true, true));
        assertThat(styled).contains(ESCAPE + "[48;2;").contains(ESCAPE + "[1mHold in the oven");
        assertThat(plain(SampleCard.plunger(), 80)).contains("→ pale straw    188 °C (370 °F)");
    }

    @Test
    void inchUnitsComeFirstWhereAskedFor() {
        String text = TerminalCard.write(CardView.of(SampleCard.plunger()), UnitSystem.INCH, Screen.plain(100));
        assertThat(text)
                .contains("Soak at 1455–1500 °F (790–815 °C)")
                .contains("thou")
                .contains("lbf");
    }

    private static String plain(JobCard card, int columns) {
        return TerminalCard.write(CardView.of(card), UnitSystem.METRIC, Screen.plain(columns));
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
