package org.strawblue.app.report.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.strawblue.app.report.Text;
import org.strawblue.app.report.picture.Mark.Point;
import org.strawblue.app.report.picture.Pen;

/** Writes on one page, measured in points from its upper left corner. */
final class Pencil implements AutoCloseable {

    private static final float SEAM = 0.6f;

    private final PDPageContentStream stream;
    private final double height;
    private final Typefaces faces;
    private final Map<Pen, PDExtendedGraphicsState> states = new HashMap<>();

    Pencil(PDDocument document, PDPage page, Typefaces faces) throws IOException {
        this.stream = new PDPageContentStream(document, page);
        PDRectangle box = page.getMediaBox();
        this.height = box.getHeight();
        this.faces = faces;
    }

    /** A line of text; {@code y} is its base line. */
    void text(String text, double x, double y, boolean strong, double size, double ink) {
        Typeface face = faces.of(strong);
        write(() -> {
            stream.beginText();
            stream.setNonStrokingColor((float) (1 - ink));
            stream.setFont(face.font(), (float) size);
            stream.newLineAtOffset((float) x, (float) (height - y));
            stream.showText(Text.loose(face.settable(text)));
            stream.endText();
        });
    }

    double width(String text, boolean strong, double size) {
        return faces.of(strong).width(faces.of(strong).settable(text), size);
    }

    void rule(double x1, double y1, double x2, double y2, double width, double ink) {
        write(() -> {
            stream.setStrokingColor((float) (1 - ink));
            stream.setLineWidth((float) width);
            stream.moveTo((float) x1, (float) (height - y1));
            stream.lineTo((float) x2, (float) (height - y2));
            stream.stroke();
        });
    }

    void frame(double x, double y, double w, double h, double width) {
        write(() -> {
            stream.setStrokingColor(0f);
            stream.setLineWidth((float) width);
            stream.addRect((float) x, (float) (height - y - h), (float) w, (float) h);
            stream.stroke();
        });
    }

    /** A field of a colour of its own, "#rrggbb". */
    void fill(double x, double y, double w, double h, String hex) {
        write(() -> {
            colour(hex);
            stream.addRect((float) x, (float) (height - y - h), (float) w, (float) h);
            stream.fill();
        });
    }

    /** An area of a colour of its own, "#rrggbb"; a thin edge of the same leaves no seam to its neighbours. */
    void fill(List<Point> points, String hex) {
        write(() -> {
            colour(hex);
            stream.setLineWidth(SEAM);
            trace(points, true);
            stream.fillAndStroke();
        });
    }

    private void colour(String hex) throws IOException {
        int rgb = Integer.parseInt(hex.substring(1), 16);
        float red = (rgb >> 16 & 255) / 255f;
        float green = (rgb >> 8 & 255) / 255f;
        float blue = (rgb & 255) / 255f;
        stream.setNonStrokingColor(red, green, blue);
        stream.setStrokingColor(red, green, blue);
    }

    /** A path drawn with a pen of a drawing; {@code scale} applies to the pen as well. */
    void path(Pen pen, List<Point> points, boolean closed, double scale) {
        write(() -> {
            stream.saveGraphicsState();
            stream.setGraphicsStateParameters(states.computeIfAbsent(pen, Pencil::state));
            stream.setStrokingColor(0f);
            stream.setNonStrokingColor(0f);
            stream.setLineWidth((float) (pen.width() * scale));
            stream.setLineJoinStyle(1);
            dash(pen, scale);
            trace(points, closed);
            finish(pen);
            stream.restoreGraphicsState();
        });
    }

    private void dash(Pen pen, double scale) throws IOException {
        double[] dash = pen.dash();
        float[] scaled = new float[dash.length];
        for (int i = 0; i < dash.length; i++) {
            scaled[i] = (float) (dash[i] * scale);
        }
        stream.setLineDashPattern(scaled, 0);
    }

    private void trace(List<Point> points, boolean closed) throws IOException {
        Point first = points.get(0);
        stream.moveTo((float) first.x(), (float) (height - first.y()));
        for (Point p : points.subList(1, points.size())) {
            stream.lineTo((float) p.x(), (float) (height - p.y()));
        }
        if (closed) {
            stream.closePath();
        }
    }

    private void finish(Pen pen) throws IOException {
        if (pen.fill() > 0 && pen.width() > 0) {
            stream.fillAndStroke();
        } else if (pen.fill() > 0) {
            stream.fill();
        } else {
            stream.stroke();
        }
    }

    private static PDExtendedGraphicsState state(Pen pen) {
        PDExtendedGraphicsState state = new PDExtendedGraphicsState();
        state.setStrokingAlphaConstant((float) pen.stroke());
        state.setNonStrokingAlphaConstant((float) pen.fill());
        return state;
    }

    @Override
    public void close() {
        write(stream::close);
    }

    private interface Writing {
        void run() throws IOException;
    }

    private static void write(Writing writing) {
        try {
            writing.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
