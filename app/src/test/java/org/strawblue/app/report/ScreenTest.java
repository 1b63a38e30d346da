package org.strawblue.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class ScreenTest {

    private static final Map<String, String> COLOURFUL =
            Map.of("TERM", "xterm-256color", "COLORTERM", "truecolor", "COLUMNS", "100");

    @AfterEach
    void forget() {
        System.clearProperty(Screen.COLUMNS_PROPERTY);
    }

    @Test
    void aTerminalWithEveryColourShowsThem() {
        assertThat(Screen.detect(COLOURFUL, true)).isEqualTo(new Screen(100, true, true));
    }

    @Test
    void aPipeAndNoColorGetPlainText() {
        assertThat(Screen.detect(COLOURFUL, false)).isEqualTo(new Screen(100, false, false, false));
        assertThat(Screen.detect(Map.of("TERM", "xterm", "COLORTERM", "24bit", "NO_COLOR", "1"), true))
                .isEqualTo(Screen.plain(80));
        assertThat(Screen.detect(Map.of("TERM", "dumb"), true)).isEqualTo(Screen.plain(80));
    }

    /** The first of LC_ALL, LC_CTYPE and LANG that is set counts, as POSIX has it. */
    @Test
    void aPipeDrawsInAsciiUnlessItsLocaleSaysUtf8() {
        assertThat(Screen.detect(Map.of("LANG", "de_DE.UTF-8"), false).unicode())
                .isTrue();
        assertThat(Screen.detect(Map.of("LANG", "C.utf8"), false).unicode()).isTrue();
        assertThat(Screen.detect(Map.of("LANG", "en_GB.UTF-8", "LC_ALL", "C"), false)
                        .unicode())
                .isFalse();
        assertThat(Screen.detect(Map.of("LANG", "tr_TR.ISO-8859-9"), false).unicode())
                .isFalse();
    }

    @Test
    void thePropertyRulesTheWidthAndNonsenseDoesNot() {
        System.setProperty(Screen.COLUMNS_PROPERTY, "64");
        assertThat(Screen.detect(COLOURFUL, true).columns()).isEqualTo(64);
        System.setProperty(Screen.COLUMNS_PROPERTY, "wide");
        assertThat(Screen.detect(COLOURFUL, true).columns()).isEqualTo(100);
        System.setProperty(Screen.COLUMNS_PROPERTY, "3");
        assertThat(Screen.detect(COLOURFUL, true).columns()).isEqualTo(40);
        System.setProperty(Screen.COLUMNS_PROPERTY, "999");
        assertThat(Screen.detect(COLOURFUL, true).columns()).isEqualTo(120);
    }
}
