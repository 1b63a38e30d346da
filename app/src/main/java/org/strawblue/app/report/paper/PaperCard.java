package org.strawblue.app.report.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.strawblue.app.report.CardView;
import org.strawblue.app.report.Footnotes;
import org.strawblue.core.job.Shop.Paper;
import org.strawblue.core.job.UnitSystem;

/** The card as a PDF to pin up. The same card gives the same bytes. */
public final class PaperCard {

    private static final double SIDE = 46;
    private static final double TOP = 46;
    private static final double FOOT = 44;
    private static final double SMALL = 8.5;
    private static final double GREY = 0.65;

    private final PDDocument document;
    private final Typefaces faces;
    private final PDRectangle sheet;
    private final double width;

    private PaperCard(PDDocument document, PDRectangle sheet) throws IOException {
        this.document = document;
        this.faces = Typefaces.load(document);
        this.sheet = sheet;
        this.width = sheet.getWidth() - 2 * SIDE;
    }

    public static void write(CardView view, UnitSystem system, Paper paper, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument()) {
            new PaperCard(document, paper == Paper.LETTER ? PDRectangle.LETTER : PDRectangle.A4).set(view, system);
            describe(document, view);
            document.save(out);
        }
    }

    private void set(CardView view, UnitSystem system) throws IOException {
        Flow flow = new Flow(faces, width, sheet.getHeight() - TOP - FOOT);
        CardBlocks.of(view, system).forEach(flow::group);
        List<List<Flow.Set>> pages = flow.pages();
        for (int i = 0; i < pages.size(); i++) {
            PDPage page = new PDPage(sheet);
            document.addPage(page);
            try (Pencil pencil = new Pencil(document, page, faces)) {
                edges(pencil, view, i + 1, pages.size());
                pages.get(i).forEach(set -> draw(pencil, set));
            }
        }
    }

    private void draw(Pencil pencil, Flow.Set set) {
        double indent = set.placed().indent();
        set.placed().block().draw(pencil, faces, SIDE + indent, TOP + set.y(), width - indent);
    }

    /** Head and foot: the card's name from the second page on, what the brackets mean, and the page's number. */
    private void edges(Pencil pencil, CardView view, int number, int count) {
        double foot = sheet.getHeight() - FOOT + 22;
        String page = "page " + number + " of " + count;
        pencil.text(view.hasIntervals() ? Footnotes.KEY : "", SIDE, foot, false, SMALL, GREY);
        pencil.text(page, SIDE + width - pencil.width(page, false, SMALL), foot, false, SMALL, GREY);
        String head = number == 1 ? "Job card" : firstLine(view.title());
        pencil.text(head, SIDE, TOP - 16, false, SMALL, GREY);
    }

    private String firstLine(String title) {
        return faces.regular().lines(title, SMALL, width).get(0);
    }

    private static void describe(PDDocument document, CardView view) {
        PDDocumentInformation about = document.getDocumentInformation();
        about.setTitle(view.title());
        about.setCreator("Strawblue");
        document.getDocumentCatalog().setLanguage("en");
        document.setDocumentId((long) words(view).hashCode());
    }

    /** What tells this card from another: of text alone, whose hash is the same in every run. */
    private static String words(CardView view) {
        StringBuilder words = new StringBuilder(view.title());
        view.summary().forEach(s -> words.append(s.metric()));
        view.steps().forEach(s -> words.append(s.lead().metric()));
        return words.toString();
    }
}
