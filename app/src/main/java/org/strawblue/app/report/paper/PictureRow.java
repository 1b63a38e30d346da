package org.strawblue.app.report.paper;

import java.util.List;
import org.strawblue.app.report.picture.Drawing;
import org.strawblue.app.report.picture.Mark;
import org.strawblue.app.report.picture.Mark.Field;
import org.strawblue.app.report.picture.Mark.Label;
import org.strawblue.app.report.picture.Mark.Patch;
import org.strawblue.app.report.picture.Mark.Path;
import org.strawblue.app.report.picture.Mark.Point;

/** One or two drawings side by side, each under its caption. */
record PictureRow(List<Captioned> pictures) implements Block {

    static final int IN_A_ROW = 2;

    private static final double GUTTER = 18;
    private static final double ABOVE = 6;
    private static final double BELOW = 6;

    record Captioned(String caption, Drawing drawing) {}

    @Override
    public double height(Typefaces faces, double width) {
        double tallest = pictures.stream()
                .mapToDouble(p -> p.drawing().height() * scale(width))
                .max()
                .orElse(0);
        return ABOVE + captionHeight(faces, width) + tallest + BELOW;
    }

    @Override
    public void draw(Pencil pencil, Typefaces faces, double x, double y, double width) {
        double left = x;
        for (Captioned picture : pictures) {
            caption(picture).draw(pencil, faces, left, y + ABOVE, cell(width));
            double top = y + ABOVE + captionHeight(faces, width);
            draw(pencil, picture.drawing(), left, top, scale(width));
            left += cell(width) + GUTTER;
        }
    }

    static void draw(Pencil pencil, Drawing drawing, double x, double y, double scale) {
        for (Mark mark : drawing.marks()) {
            draw(pencil, mark, x, y, scale);
        }
    }

    private static void draw(Pencil pencil, Mark mark, double x, double y, double scale) {
        if (mark instanceof Path path) {
            pencil.path(path.pen(), placed(path.points(), x, y, scale), path.closed(), scale);
        } else if (mark instanceof Patch patch) {
            pencil.fill(placed(patch.points(), x, y, scale), patch.hex());
        } else if (mark instanceof Field f) {
            pencil.fill(x + f.x() * scale, y + f.y() * scale, f.width() * scale, f.height() * scale, f.hex());
        } else if (mark instanceof Label label) {
            label(pencil, label, x, y, scale);
        }
    }

    private static List<Point> placed(List<Point> points, double x, double y, double scale) {
        return points.stream()
                .map(p -> new Point(x + p.x() * scale, y + p.y() * scale))
                .toList();
    }

    private static void label(Pencil pencil, Label label, double x, double y, double scale) {
        boolean strong = label.lettering().strong();
        double size = label.lettering().size() * scale;
        double width = pencil.width(label.text(), strong, size);
        double shift = switch (label.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        pencil.text(label.text(), x + label.x() * scale - shift, y + label.y() * scale, strong, size, 1);
    }

    private double captionHeight(Typefaces faces, double width) {
        return pictures.stream()
                        .mapToDouble(p -> caption(p).height(faces, cell(width)))
                        .max()
                        .orElse(0)
                + 3;
    }

    private static Paragraph caption(Captioned picture) {
        return new Paragraph(Style.BODY, picture.caption());
    }

    private static double cell(double width) {
        return (width - GUTTER) / IN_A_ROW;
    }

    private static double scale(double width) {
        return cell(width) / Drawing.WIDTH;
    }
}
