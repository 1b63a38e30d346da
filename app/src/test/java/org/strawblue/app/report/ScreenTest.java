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
        assertThat(Screen.detect(COLOURFUL, false)).isEqualTo(Screen.plain(100));
        assertThat(Screen.detect(Map.of("TERM", "xterm", "COLORTERM", "24bit", "NO_COLOR", "1"), true))
                .isEqualTo(Screen.plain(80));
        assertThat(Screen.detect(Map.of("TERM", "dumb"), true)).isEqualTo(Screen.plain(80));
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
