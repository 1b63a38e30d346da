package org.strawblue.app.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.app.report.CardView;
import org.strawblue.app.report.SampleCard;
import org.strawblue.core.job.JobCard;
import org.strawblue.core.job.Shop.Paper;
import org.strawblue.core.job.Step;
import org.strawblue.core.job.UnitSystem;

class PaperCardTest {

    @Test
    void everyInstructionCanBeReadInOrder() throws IOException {
        String text = text(write(SampleCard.plunger(), Paper.A4));
        int from = 0;
        for (Step step : SampleCard.plunger().steps()) {
            String lead = new AmountWriter(UnitSystem.METRIC).write(step.lead());
            int at = text.indexOf(lead, from);
            assertThat(at).as(lead).isGreaterThanOrEqualTo(from);
            from = at;
        }
        assertThat(text)
                .contains("Danger. Hot oil can flash")
                .contains("takes a set above 26 N")
                .contains("−0.004 to +0.016");
    }

    @Test
    void aTypicalJobTakesThreePagesAtMostAndEachIsNumbered() throws IOException {
        byte[] pdf = write(SampleCard.plunger(), Paper.A4);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            int pages = document.getNumberOfPages();
            assertThat(pages).isBetween(1, 3);
            for (int i = 1; i <= pages; i++) {
                assertThat(text(pdf)).contains("page " + i + " of " + pages);
            }
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo(SampleCard.plunger().title());
        }
    }

    @Test
    void theSheetIsTheOneAskedFor() throws IOException {
        assertThat(sheet(Paper.A4)).isEqualTo(PDRectangle.A4.getHeight());
        assertThat(sheet(Paper.LETTER)).isEqualTo(PDRectangle.LETTER.getHeight());
    }

    @Test
    void everyFontIsEmbedded() throws IOException {
        try (PDDocument document = Loader.loadPDF(write(SampleCard.plunger(), Paper.A4))) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                }
            }
        }
    }

    @Test
    void theSameCardGivesTheSameBytes() throws IOException {
        assertThat(write(SampleCard.plunger(), Paper.A4)).isEqualTo(write(SampleCard.plunger(), Paper.A4));
    }

    @Test
    void aRefusalLeadsAndHostileTextDoesNoHarm() throws IOException {
        String refused = text(write(SampleCard.refused(), Paper.LETTER));
        assertThat(refused.indexOf("Not to be done as asked")).isBetween(0, refused.indexOf("Pin: mild steel"));
        assertThat(text(write(SampleCard.hostile(), Paper.A4))).contains("<b>Pin & \"bush\"</b>");
    }

    private static byte[] write(JobCard card, Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PaperCard.write(CardView.of(card), UnitSystem.METRIC, paper, out);
        return out.toByteArray();
    }

    private static double sheet(Paper paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(write(SampleCard.refused(), paper))) {
            return document.getPage(0).getMediaBox().getHeight();
        }
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
