package org.strawblue.core.oxide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.strawblue.core.colour.Light;

/** The ribbons of the science book are what the program draws today; a stale picture fails, the new one is in target. */
class RibbonPictureTest {

    private static final Map<Integer, String> TIMES =
            new TreeMap<>(Map.of(120, "2 min", 480, "8 min", 3600, "1 h", 14400, "4 h"));
    private static final int FROM = 150;
    private static final int TO = 375;
    private static final int ROW = 62;

    @Test
    void thePictureInTheBookIsToday() throws IOException {
        String now = svg();
        Files.writeString(Path.of("target", "colour-ribbons.svg"), now);
        assertThat(Files.readString(Path.of("../docs/science/colour-ribbons.svg")))
                .isEqualTo(now);
    }

    private static String svg() {
        StringBuilder out = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 760 "
                + (TIMES.size() * ROW + 10) + "\" font-family=\"sans-serif\" font-size=\"9\">\n");
        int y = 5;
        for (var time : TIMES.entrySet()) {
            ribbon(out, time.getKey(), time.getValue(), y);
            y += ROW;
        }
        return out.append("</svg>\n").toString();
    }

    private static void ribbon(StringBuilder out, int seconds, String words, int y) {
        text(out, 2, y + 22, words);
        List<RibbonColour> colours =
                FilmColours.standard().ribbon(seconds, Light.DAYLIGHT, FROM + 273.15, TO + 273.15, TO - FROM + 1);
        ColourName last = ColourName.BRIGHT;
        int names = 0;
        for (int i = 0; i < colours.size(); i++) {
            FilmColour colour = colours.get(i).colour();
            int x = 50 + 3 * i;
            out.append("<rect x=\"" + x + "\" y=\"" + y + "\" width=\"4\" height=\"32\" fill=\"" + colour.hex()
                    + "\"/>\n");
            if (colour.name() != last) {
                last = colour.name();
                text(out, x, y + (names++ % 2 == 0 ? 42 : 52), last.word() + " " + (FROM + i));
            }
        }
    }

    private static void text(StringBuilder out, int x, int y, String words) {
        out.append("<text x=\"" + x + "\" y=\"" + y + "\">" + words + "</text>\n");
    }
}
