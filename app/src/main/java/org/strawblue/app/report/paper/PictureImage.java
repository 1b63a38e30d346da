package org.strawblue.app.report.paper;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.strawblue.app.report.picture.Drawing;

/** A drawing as an image (PNG): set on a page of its own size in the card's typeface, and that page rastered. */
public final class PictureImage {

    /** Pixels to a unit of the drawing. */
    private static final float SHARPNESS = 3;

    private static final double MARGIN = 10;

    private PictureImage() {}

    public static byte[] png(Drawing drawing) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(
                    new PDRectangle((float) (drawing.width() + 2 * MARGIN), (float) (drawing.height() + 2 * MARGIN)));
            document.addPage(page);
            try (Pencil pencil = new Pencil(document, page, Typefaces.load(document))) {
                PictureRow.draw(pencil, drawing, MARGIN, MARGIN, 1);
            }
            return png(saved(document));
        }
    }

    /** The letters a page needs are put together only when it is saved. */
    private static BufferedImage saved(PDDocument document) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.save(bytes);
        try (PDDocument whole = Loader.loadPDF(bytes.toByteArray())) {
            return new PDFRenderer(whole).renderImage(0, SHARPNESS, ImageType.RGB);
        }
    }

    private static byte[] png(BufferedImage image) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }
}
