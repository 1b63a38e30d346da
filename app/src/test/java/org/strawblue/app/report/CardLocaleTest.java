package org.strawblue.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.job.UnitSystem;

/** The card does not change with the machine's language: no decimal commas, no dotless i, no other digits. */
class CardLocaleTest {

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "th-TH-u-nu-thai"})
    void theSameEverywhere(String tag) {
        String usual = inLocale(Locale.UK);
        assertThat(inLocale(Locale.forLanguageTag(tag))).isEqualTo(usual);
    }

    private static String inLocale(Locale locale) {
        Locale before = Locale.getDefault();
        Locale.setDefault(locale);
        try {
            return TerminalCard.write(CardView.of(SampleCard.plunger()), UnitSystem.INCH, Screen.plain(80))
                    + PageCard.write(CardView.of(SampleCard.plunger()), UnitSystem.METRIC)
                    + CardJson.write(SampleCard.plunger(), UnitSystem.METRIC);
        } finally {
            Locale.setDefault(before);
        }
    }
}
