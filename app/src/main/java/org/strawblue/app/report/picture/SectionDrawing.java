package org.strawblue.app.report.picture;

import java.util.List;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.app.report.picture.Mark.Anchor;
import org.strawblue.app.report.picture.Mark.Lettering;
import org.strawblue.app.report.picture.Mark.Point;
import org.strawblue.core.job.Picture.Cell;
import org.strawblue.core.job.Picture.Corner;
import org.strawblue.core.job.Picture.Moment;
import org.strawblue.core.job.Picture.SectionWarming;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;

/** The section at each moment side by side, the hotter the darker, with its coldest and hottest temperature. */
record SectionDrawing(SectionWarming section, AmountWriter writer) {

    private static final double TOP = 26;
    private static final double FIELD = 110;
    private static final double GAP = 10;
    private static final int PALE = 225;
    private static final int DARK = 75;

    Drawing draw() {
        Sheet sheet = new Sheet();
        int n = section.moments().size();
        double room = (Drawing.WIDTH - GAP) / n;
        for (int i = 0; i < n; i++) {
            drawMoment(sheet, section.moments().get(i), i * room + GAP, room - GAP);
        }
        double foot = TOP + FIELD;
        if (section.onPlate()) {
            sheet.line(Pen.OUTLINE, GAP, foot, Drawing.WIDTH - GAP, foot);
            sheet.hatched(GAP, foot, Drawing.WIDTH - 2 * GAP, 7);
        }
        return sheet.drawing("The section while it warms", description(), foot + 42);
    }

    private void drawMoment(Sheet sheet, Moment moment, double x, double width) {
        Band across = extent(true);
        Band up = extent(false);
        double scale = Math.min(width / across.width(), FIELD / up.high());
        Band heat = temperatures();
        double left = x + (width - across.width() * scale) / 2;
        for (int i = 0; i < section.cells().size(); i++) {
            List<Point> corners = section.cells().get(i).corners().stream()
                    .map(c -> new Point(left + (c.x() - across.low()) * scale, TOP + FIELD - c.y() * scale))
                    .toList();
            sheet.patch(grey(heat, moment.kelvin().get(i)), corners);
        }
        double middle = x + width / 2;
        sheet.label(writer.write(Quantity.time(moment.seconds())), middle, 14, Lettering.STRONG, Anchor.MIDDLE);
        sheet.label(hottest(moment), middle, TOP + FIELD + 22, Lettering.SMALL, Anchor.MIDDLE);
        sheet.label(coldest(moment), middle, TOP + FIELD + 36, Lettering.SMALL, Anchor.MIDDLE);
    }

    private String hottest(Moment moment) {
        return "to " + writer.first(Quantity.temperature(max(moment)));
    }

    private String coldest(Moment moment) {
        return "from "
                + writer.first(Quantity.temperature(
                        moment.kelvin().stream().mapToDouble(k -> k).min().orElse(0)));
    }

    private static double max(Moment moment) {
        return moment.kelvin().stream().mapToDouble(k -> k).max().orElse(0);
    }

    private Band temperatures() {
        double[] all = section.moments().stream()
                .flatMap(m -> m.kelvin().stream())
                .mapToDouble(k -> k)
                .sorted()
                .toArray();
        return new Band(Dimension.TEMPERATURE, all[0], all[all.length - 1]);
    }

    private Band extent(boolean across) {
        double[] all = section.cells().stream()
                .map(Cell::corners)
                .flatMap(List::stream)
                .mapToDouble(c -> coordinate(c, across))
                .sorted()
                .toArray();
        return new Band(Dimension.LENGTH, all[0], all[all.length - 1]);
    }

    private static double coordinate(Corner corner, boolean across) {
        return across ? corner.x() : corner.y();
    }

    private static String grey(Band heat, double kelvin) {
        double share = heat.width() == 0 ? 0 : (kelvin - heat.low()) / heat.width();
        String two = Integer.toHexString((int) Math.round(PALE + (DARK - PALE) * share));
        return "#" + two + two + two;
    }

    private String description() {
        StringBuilder text = new StringBuilder(section.onPlate() ? "Lying on the plate." : "The section.");
        for (Moment m : section.moments()) {
            text.append(' ').append(writer.write(Quantity.time(m.seconds())));
            text.append(": ").append(coldest(m)).append(' ').append(hottest(m)).append('.');
        }
        return text.toString();
    }
}
