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
    /** Width over height from which sections stand one below the other. */
    private static final double LONG = 3;

    private static final int PALE = 225;
    private static final int DARK = 75;

    Drawing draw() {
        return extent(true).width() > LONG * extent(false).high() ? oneBelowTheOther() : sideBySide();
    }

    private Drawing sideBySide() {
        Sheet sheet = new Sheet();
        int n = section.moments().size();
        double room = (Drawing.WIDTH - GAP) / n;
        double scale = Math.min(
                (room - GAP) / extent(true).width(), FIELD / extent(false).high());
        double foot = TOP + extent(false).high() * scale;
        for (int i = 0; i < n; i++) {
            Moment moment = section.moments().get(i);
            double middle = i * room + GAP + (room - GAP) / 2;
            drawSection(sheet, moment, middle, foot, scale);
            sheet.label(writer.write(Quantity.time(moment.seconds())), middle, 14, Lettering.STRONG, Anchor.MIDDLE);
            sheet.label(span(moment), middle, foot + 22, Lettering.SMALL, Anchor.MIDDLE);
        }
        drawPlate(sheet, foot);
        return sheet.drawing("The section while it warms", description(), foot + 30);
    }

    /** What is long and flat is drawn as wide as the sheet. */
    private Drawing oneBelowTheOther() {
        Sheet sheet = new Sheet();
        double scale = (Drawing.WIDTH - 2 * GAP) / extent(true).width();
        double y = 0;
        for (Moment moment : section.moments()) {
            double foot = y + TOP + extent(false).high() * scale;
            sheet.label(writer.write(Quantity.time(moment.seconds())), GAP, y + 16, Lettering.STRONG, Anchor.START);
            sheet.label(span(moment), Drawing.WIDTH - GAP, y + 16, Lettering.SMALL, Anchor.END);
            drawSection(sheet, moment, Drawing.WIDTH / 2, foot, scale);
            drawPlate(sheet, foot);
            y = foot + 12;
        }
        return sheet.drawing("The section while it warms", description(), y + 4);
    }

    private void drawPlate(Sheet sheet, double foot) {
        if (section.onPlate()) {
            sheet.line(Pen.OUTLINE, GAP, foot, Drawing.WIDTH - GAP, foot);
            sheet.hatched(GAP, foot, Drawing.WIDTH - 2 * GAP, 7);
        }
    }

    private void drawSection(Sheet sheet, Moment moment, double middle, double foot, double scale) {
        Band across = extent(true);
        Band heat = temperatures();
        double left = middle - across.width() * scale / 2;
        for (int i = 0; i < section.cells().size(); i++) {
            List<Point> corners = section.cells().get(i).corners().stream()
                    .map(c -> new Point(left + (c.x() - across.low()) * scale, foot - c.y() * scale))
                    .toList();
            sheet.patch(grey(heat, moment.kelvin().get(i)), corners);
        }
    }

    private String span(Moment moment) {
        String cold = writer.first(Quantity.temperature(min(moment)));
        String hot = writer.first(Quantity.temperature(max(moment)));
        return cold.equals(hot) ? "all at " + hot : cold + " to " + hot;
    }

    private static double min(Moment moment) {
        return moment.kelvin().stream().mapToDouble(k -> k).min().orElse(0);
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
            text.append(": ").append(span(m)).append('.');
        }
        return text.toString();
    }
}
