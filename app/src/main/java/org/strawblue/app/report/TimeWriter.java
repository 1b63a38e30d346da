package org.strawblue.app.report;

import java.math.BigDecimal;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/** Times as a clock on the wall tells them: "8 s", "45 min", "1 h 30 min", "40–50 min". */
final class TimeWriter {

    private static final Unit MINUTE = Units.of(Dimension.TIME, "min");
    private static final Unit HOUR = Units.of(Dimension.TIME, "h");
    private static final double LONGEST_IN_SECONDS = 2 * MINUTE.factor();
    private static final double LONGEST_IN_MINUTES = 2 * HOUR.factor();
    private static final double FINEST_BELOW = 10;

    private TimeWriter() {}

    static String write(double seconds) {
        if (seconds < LONGEST_IN_SECONDS) {
            return shortTime(seconds);
        }
        long minutes = Math.round(MINUTE.fromSi(seconds));
        return minutes < MINUTE.fromSi(HOUR.factor()) ? minutes + " min" : hours(minutes);
    }

    /** To the second up to some minutes, as a stopwatch tells it: "6 min 50 s". */
    static String watch(double seconds) {
        long whole = Math.round(seconds);
        long perMinute = Math.round(MINUTE.factor());
        if (seconds < LONGEST_IN_SECONDS || seconds >= FINEST_BELOW * MINUTE.factor()) {
            return write(seconds);
        }
        long rest = whole % perMinute;
        return whole / perMinute + " min" + (rest == 0 ? "" : " " + rest + " s");
    }

    static String write(Band band) {
        Unit unit = unitFor(band.high());
        if (unit.equals(HOUR) && !wholeHalfHours(band)) {
            return write(band.low()) + " to " + write(band.high());
        }
        BigDecimal step = Rounding.stepFor(band.width() / unit.factor(), finest(unit, band.high()), 100);
        BigDecimal low = Rounding.round(unit.fromSi(band.low()), step);
        BigDecimal high = Rounding.round(unit.fromSi(band.high()), step);
        String tail = Rounding.write(high) + " " + symbol(unit);
        return low.compareTo(high) == 0 ? tail : Rounding.write(low) + "–" + tail;
    }

    private static String shortTime(double seconds) {
        double finest = seconds < FINEST_BELOW ? 0.1 : 1;
        BigDecimal step = Rounding.stepForFigures(seconds, 2, finest);
        if (Rounding.round(seconds, step).doubleValue() == MINUTE.factor()) {
            return "1 min";
        }
        return Rounding.write(Rounding.round(seconds, step)) + " s";
    }

    private static String hours(long minutes) {
        long perHour = Math.round(MINUTE.fromSi(HOUR.factor()));
        long whole = minutes / perHour;
        long rest = minutes % perHour;
        return rest == 0 ? whole + " h" : whole + " h " + rest + " min";
    }

    private static Unit unitFor(double seconds) {
        if (seconds < LONGEST_IN_SECONDS) {
            return Units.of(Dimension.TIME, "s");
        }
        return seconds < LONGEST_IN_MINUTES ? MINUTE : HOUR;
    }

    private static String symbol(Unit unit) {
        return unit.symbol();
    }

    private static double finest(Unit unit, double seconds) {
        return unit.equals(HOUR) ? 0.5 : seconds < FINEST_BELOW ? 0.1 : 1;
    }

    private static boolean wholeHalfHours(Band band) {
        double half = HOUR.factor() / 2;
        return band.low() % half == 0 && band.high() % half == 0;
    }
}
