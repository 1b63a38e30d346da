package org.strawblue.app.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Times of a log as clocks write them: 14:30, 14:30:05.5, 2:30 PM, with or without a date before it (2026-01-31, 31.1.2026,
 * 1/31/2026). A clock without a date that jumps back has passed midnight.
 */
final class LogClock {

    private static final Pattern CLOCK =
            Pattern.compile("(?:(\\S+)[ T]\\s*)?(\\d{1,3}):(\\d{2})(?::(\\d{2}(?:[.,]\\d{1,9})?))?"
                    + "\\s*([AaPp]\\.?[Mm]\\.?)?\\s*(?:Z|[+-]\\d{2}:?\\d{2})?");
    private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");
    private static final Pattern MONTH_FIRST = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4})");
    private static final int DAY = 86_400;
    private static final int HOUR = 3600;
    private static final int MINUTE = 60;
    private static final int NOON = 12;

    private double last = Double.NEGATIVE_INFINITY;
    private double passed = 0;

    /** Seconds from some moment; absent where it is no time of a clock. */
    OptionalDouble seconds(String text) {
        Matcher m = CLOCK.matcher(text.strip());
        if (!m.matches()) {
            return OptionalDouble.empty();
        }
        int hour = hour(Integer.parseInt(m.group(2)), m.group(5));
        int minute = Integer.parseInt(m.group(3));
        double second = m.group(4) == null ? 0 : Double.parseDouble(m.group(4).replace(',', '.'));
        if (minute >= MINUTE || second >= MINUTE) {
            return OptionalDouble.empty();
        }
        double time = (double) hour * HOUR + (double) minute * MINUTE + second;
        return m.group(1) == null ? OptionalDouble.of(onwards(time)) : dated(m.group(1), time);
    }

    private static int hour(int hour, @org.jspecify.annotations.Nullable String half) {
        if (half == null) {
            return hour;
        }
        boolean after = half.toLowerCase(java.util.Locale.ROOT).startsWith("p");
        return hour % NOON + (after ? NOON : 0);
    }

    private double onwards(double time) {
        if (time < last - DAY / 2.0) {
            passed += DAY;
        }
        last = time;
        return passed + time;
    }

    private static OptionalDouble dated(String date, double time) {
        Matcher iso = ISO.matcher(date);
        Matcher day = DAY_FIRST.matcher(date);
        Matcher month = MONTH_FIRST.matcher(date);
        try {
            if (iso.matches()) {
                return OptionalDouble.of(day(iso, 1, 2, 3) + time);
            }
            if (day.matches()) {
                return OptionalDouble.of(day(day, 3, 2, 1) + time);
            }
            return month.matches() ? OptionalDouble.of(day(month, 3, 1, 2) + time) : OptionalDouble.empty();
        } catch (DateTimeException e) {
            return OptionalDouble.empty();
        }
    }

    private static double day(Matcher m, int year, int month, int day) {
        return (double) DAY
                * LocalDate.of(
                                Integer.parseInt(m.group(year)),
                                Integer.parseInt(m.group(month)),
                                Integer.parseInt(m.group(day)))
                        .toEpochDay();
    }
}
