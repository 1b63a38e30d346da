package org.strawblue.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.strawblue.app.report.paper.PaperCard;
import org.strawblue.core.job.JobCard;
import org.strawblue.core.job.Shop.Paper;
import org.strawblue.core.job.UnitSystem;

/** Writes the sample cards to {@code target/cards} in all forms, for the eye; what they must hold is tested elsewhere. */
class CardFormsTest {

    private static final Path FOLDER = Path.of("target", "cards");

    @Test
    void everyFormOfEveryCardIsWritten() throws IOException {
        Files.createDirectories(FOLDER);
        write("plunger", SampleCard.plunger());
        write("refused", SampleCard.refused());
        write("hostile", SampleCard.hostile());
        assertThat(FOLDER.resolve("plunger.pdf")).isNotEmptyFile();
    }

    private static void write(String name, JobCard card) throws IOException {
        Files.writeString(FOLDER.resolve(name + ".html"), PageCard.write(CardView.of(card), UnitSystem.METRIC));
        Files.writeString(FOLDER.resolve(name + ".json"), CardJson.write(card, UnitSystem.METRIC));
        for (int columns : new int[] {80, 120}) {
            Files.writeString(
                    FOLDER.resolve(name + "-" + columns + ".txt"),
                    TerminalCard.write(CardView.of(card), UnitSystem.METRIC, Screen.plain(columns)));
        }
        Files.writeString(
                FOLDER.resolve(name + ".ansi"),
                TerminalCard.write(CardView.of(card), UnitSystem.METRIC, new Screen(80, true, true)));
        for (Paper paper : Paper.values()) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            UnitSystem system = paper == Paper.A4 ? UnitSystem.METRIC : UnitSystem.INCH;
            PaperCard.write(CardView.of(card), system, paper, out);
            Files.write(FOLDER.resolve(name + (paper == Paper.A4 ? "" : "-letter") + ".pdf"), out.toByteArray());
        }
    }
}
