package org.strawblue.app.report.picture;

import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import org.strawblue.app.report.picture.Mark.Anchor;
import org.strawblue.app.report.picture.Mark.Lettering;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/** Two level scales of one range of temperatures: the reader's own unit below, the other above. */
record TemperatureScale(Axis kelvin, UnitSystem system) {

    private static final Unit CELSIUS = Units.of(Dimension.TEMPERATURE, "°C");
    private static final Unit FAHRENHEIT = Units.of(Dimension.TEMPERATURE, "°F");
    private static final double TICK = 4;
    private static final int TICKS = 6;
    private static final double HALF_FIGURE = 11;

    /** Below a field that ends at {@code bottom}. */
    void drawBelow(Sheet sheet, double bottom) {
        draw(sheet, bottom, 1, system == UnitSystem.METRIC ? CELSIUS : FAHRENHEIT, x -> true);
    }

    /** Above a field that begins at {@code top}; a bracket standing there takes the place of the figures it would cross. */
    void drawAbove(Sheet sheet, double top, Optional<Band> bracket) {
        draw(
                sheet,
                top,
                -1,
                system == UnitSystem.METRIC ? FAHRENHEIT : CELSIUS,
                x -> bracket.stream()
                        .flatMapToDouble(b -> DoubleStream.of(b.low(), b.high()))
                        .allMatch(k -> Math.abs(kelvin.at(k) - x) > HALF_FIGURE));
    }

    /** Places of the lower scale's ticks. */
    double[] ticks() {
        Unit unit = system == UnitSystem.METRIC ? CELSIUS : FAHRENHEIT;
        return in(unit).ticks(TICKS).stream().mapToDouble(in(unit)::at).toArray();
    }

    private void draw(Sheet sheet, double y, int down, Unit unit, DoublePredicate room) {
        Axis axis = in(unit);
        sheet.line(Pen.THIN, kelvin.start(), y, kelvin.end(), y);
        double text = y + down * (TICK + 3) + (down > 0 ? 7 : 0);
        double free = kelvin.end() - 24;
        for (double value : axis.ticks(TICKS)) {
            double x = axis.at(value);
            sheet.line(Pen.THIN, x, y, x, y + down * TICK);
            if (x < free && room.test(x)) {
                sheet.label(Long.toString(Math.round(value)), x, text, Lettering.SMALL, Anchor.MIDDLE);
            }
        }
        sheet.label(unit.symbol(), kelvin.end() + 4, text, Lettering.SMALL, Anchor.END);
    }

    private Axis in(Unit unit) {
        return new Axis(unit.fromSi(kelvin.from()), unit.fromSi(kelvin.to()), kelvin.start(), kelvin.end());
    }
}
