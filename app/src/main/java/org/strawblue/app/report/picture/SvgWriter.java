package org.strawblue.app.report.picture;

import java.util.List;
import org.strawblue.app.report.picture.Mark.Field;
import org.strawblue.app.report.picture.Mark.Label;
import org.strawblue.app.report.picture.Mark.Patch;
import org.strawblue.app.report.picture.Mark.Path;
import org.strawblue.app.report.picture.Mark.Point;

/** Writes a drawing as SVG that stands in a page: ink is the page's own text colour, so it suits light and dark. */
public final class SvgWriter {

    private final StringBuilder out = new StringBuilder(4096);

    private SvgWriter() {}

    public static String write(Drawing drawing) {
        SvgWriter writer = new SvgWriter();
        writer.open(drawing);
        drawing.marks().forEach(writer::mark);
        return writer.out.append("</svg>").toString();
    }

    /** The same as a file of its own: on white, in black, with a size and a typeface. */
    public static String alone(Drawing drawing) {
        String head = "<svg xmlns=\"http://www.w3.org/2000/svg\"";
        String own = " width=\"" + number(2 * drawing.width()) + "\" height=\"" + number(2 * drawing.height())
                + "\" color=\"#000\" style=\"background:#fff\" font-family=\"sans-serif\"";
        return write(drawing).replace(head, head + own) + "\n";
    }

    private void open(Drawing drawing) {
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 ")
                .append(number(drawing.width()))
                .append(' ')
                .append(number(drawing.height()))
                .append("\" fill=\"none\" stroke-linejoin=\"round\"><title>")
                .append(escape(drawing.title()))
                .append("</title><desc>")
                .append(escape(drawing.description()))
                .append("</desc>\n");
    }

    private void mark(Mark mark) {
        if (mark instanceof Path path) {
            path(path);
        } else if (mark instanceof Field field) {
            field(field);
        } else if (mark instanceof Patch patch) {
            patch(patch);
        } else if (mark instanceof Label label) {
            label(label);
        }
    }

    private void path(Path path) {
        out.append("<path");
        ink(path.pen());
        trace(path.points(), path.closed());
    }

    private void patch(Patch patch) {
        out.append("<path stroke-width=\"0.8\" stroke=\"").append(escape(patch.hex()));
        out.append("\" fill=\"").append(escape(patch.hex())).append('"');
        trace(patch.points(), true);
    }

    private void trace(List<Point> points, boolean closed) {
        out.append(" d=\"");
        char command = 'M';
        for (Point p : points) {
            out.append(command).append(number(p.x())).append(' ').append(number(p.y()));
            command = 'L';
        }
        out.append(closed ? "Z" : "").append("\"/>\n");
    }

    private void ink(Pen pen) {
        if (pen.fill() > 0) {
            out.append(" fill=\"currentColor\"");
            opacity("fill-opacity", pen.fill());
        }
        if (pen.width() > 0) {
            out.append(" stroke=\"currentColor\" stroke-width=\"")
                    .append(number(pen.width()))
                    .append('"');
            opacity("stroke-opacity", pen.stroke());
        }
        if (pen.dash().length > 0) {
            out.append(" stroke-dasharray=\"");
            for (double d : pen.dash()) {
                out.append(number(d)).append(' ');
            }
            out.setLength(out.length() - 1);
            out.append('"');
        }
    }

    private void opacity(String name, double value) {
        if (value < 1) {
            out.append(' ').append(name).append("=\"").append(number(value)).append('"');
        }
    }

    private void field(Field field) {
        out.append("<rect shape-rendering=\"crispEdges\" fill=\"")
                .append(escape(field.hex()))
                .append("\" x=\"")
                .append(number(field.x()));
        out.append("\" y=\"").append(number(field.y())).append("\" width=\"").append(number(field.width()));
        out.append("\" height=\"").append(number(field.height())).append("\"/>\n");
    }

    private void label(Label label) {
        out.append("<text fill=\"currentColor\" x=\"").append(number(label.x()));
        out.append("\" y=\"").append(number(label.y()));
        out.append("\" font-size=\"").append(number(label.lettering().size())).append('"');
        if (label.lettering().strong()) {
            out.append(" font-weight=\"600\"");
        }
        switch (label.anchor()) {
            case START -> {}
            case MIDDLE -> out.append(" text-anchor=\"middle\"");
            case END -> out.append(" text-anchor=\"end\"");
        }
        out.append('>').append(escape(label.text())).append("</text>\n");
    }

    /** With up to two decimals. */
    private static String number(double value) {
        long hundredths = Math.round(Math.abs(value) * 100);
        long whole = hundredths / 100;
        long rest = hundredths % 100;
        String sign = value < 0 && hundredths > 0 ? "-" : "";
        String decimals = rest == 0 ? "" : rest % 10 == 0 ? "." + rest / 10 : rest < 10 ? ".0" + rest : "." + rest;
        return sign + whole + decimals;
    }

    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
