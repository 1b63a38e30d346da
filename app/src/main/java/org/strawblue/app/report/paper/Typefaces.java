package org.strawblue.app.report.paper;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The two weights of the card. */
record Typefaces(Typeface regular, Typeface semibold) {

    static Typefaces load(PDDocument document) throws IOException {
        return new Typefaces(
                Typeface.load(document, "font/card-regular.ttf"), Typeface.load(document, "font/card-semibold.ttf"));
    }

    Typeface of(boolean strong) {
        return strong ? semibold : regular;
    }
}
