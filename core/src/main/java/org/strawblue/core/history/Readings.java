package org.strawblue.core.history;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/**
 * Readings of a logger as they come, made a history: put in order of time, two of one moment averaged, those no sensor can mean
 * left out, gaps told. Between two readings the temperature is taken to go straight.
 */
public final class Readings {

    private static final Constants FIGURES = Constants.of(Readings.class, "readings.csv");
    private static final double COLDEST = FIGURES.si("coldest", Dimension.TEMPERATURE);
    private static final double HOTTEST = FIGURES.si("hottest", Dimension.TEMPERATURE);

    private record Point(double seconds, double kelvin) {}

    private final List<Point> points = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    /** @param kelvin [K] at those times [s]; either may be NaN where nothing was read */
    private Readings(double[] seconds, double[] kelvin) {
        int blank = 0;
        int wild = 0;
        double worst = 0;
        for (int i = 0; i < Math.min(seconds.length, kelvin.length); i++) {
            if (!Double.isFinite(seconds[i]) || !Double.isFinite(kelvin[i])) {
                blank++;
            } else if (kelvin[i] < COLDEST || kelvin[i] > HOTTEST) {
                wild++;
                worst = kelvin[i];
            } else {
                points.add(new Point(seconds[i], kelvin[i]));
            }
        }
        if (blank > 0) {
            findings.add(blank(blank));
        }
        if (wild > 0) {
            findings.add(wild(wild, worst));
        }
    }

    /** The history from the first reading on; refused where there is too little of it. */
    public static Answer<Trace> trace(double[] seconds, double[] kelvin) {
        return new Readings(seconds, kelvin).trace();
    }

    private Answer<Trace> trace() {
        order();
        List<Point> single = averaged();
        if (single.size() < 2) {
            findings.add(tooFew(single.size()));
            return Answer.refused(findings);
        }
        double first = single.get(0).seconds();
        Trace trace = new Trace(
                single.stream().mapToDouble(p -> p.seconds() - first).toArray(),
                single.stream().mapToDouble(Point::kelvin).toArray());
        return gaps(trace) ? Answer.refused(findings) : Answer.of(trace, findings);
    }

    private void order() {
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).seconds() < points.get(i - 1).seconds()) {
                findings.add(unordered());
                break;
            }
        }
        points.sort(Comparator.comparingDouble(Point::seconds));
    }

    private List<Point> averaged() {
        List<Point> single = new ArrayList<>();
        int twice = 0;
        double widest = 0;
        for (int i = 0; i < points.size(); ) {
            int k = i;
            double sum = 0;
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (; k < points.size() && points.get(k).seconds() == points.get(i).seconds(); k++) {
                sum += points.get(k).kelvin();
                low = Math.min(low, points.get(k).kelvin());
                high = Math.max(high, points.get(k).kelvin());
            }
            twice += k - i - 1;
            widest = Math.max(widest, high - low);
            single.add(new Point(points.get(i).seconds(), sum / (k - i)));
            i = k;
        }
        if (twice > 0) {
            findings.add(twice(twice, widest));
        }
        return single;
    }

    /** Whether so much is missing that the log tells nothing. */
    private boolean gaps(Trace trace) {
        double[] steps = new double[trace.size() - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = trace.second(i + 1) - trace.second(i);
        }
        double[] sorted = steps.clone();
        Arrays.sort(sorted);
        double least = Math.max(
                FIGURES.si("gap-least", Dimension.TIME), FIGURES.number("gap-times") * sorted[sorted.length / 2]);
        double missing = 0;
        int longest = 0;
        int count = 0;
        for (int i = 0; i < steps.length; i++) {
            if (steps[i] > least) {
                count++;
                missing += steps[i];
                longest = steps[i] > steps[longest] ? i : longest;
            }
        }
        boolean hopeless = missing > FIGURES.number("gap-share") * trace.duration();
        if (count > 0) {
            double at = trace.second(longest);
            findings.add(
                    hopeless
                            ? hopeless(missing, trace.duration())
                            : gap(count, at, at + steps[longest], trace.kelvin(longest), trace.kelvin(longest + 1)));
        }
        return hopeless;
    }

    private static Finding blank(int count) {
        return new Finding.Note(
                Phrase.of(count(count, "row of the log says", "rows of the log say") + " nothing."),
                Phrase.of("A blank, a dash or NaN stands where a reading should."),
                Phrase.of("Nothing need be done unless it happened while the part was hot."));
    }

    private static Finding wild(int count, double kelvin) {
        return new Finding.Caution(
                Phrase.of(
                        count(count, "reading was", "readings were") + " left out, the last of {}: beyond {} to {}.",
                        Quantity.temperature(kelvin),
                        Quantity.temperature(COLDEST),
                        Quantity.temperature(HOTTEST)),
                Phrase.of("No part and no oven of a small shop has that; an open thermocouple shows it."),
                Phrase.of("Look at the plug and the bead; check the unit of that column."));
    }

    private static Finding unordered() {
        return new Finding.Caution(
                Phrase.of("The log is not in order of time; it was sorted."),
                Phrase.of("Two logs run together, or a clock set back, look like that."),
                Phrase.of("Make sure that it is one log of one heat."));
    }

    private static Finding twice(int count, double apart) {
        return new Finding.Note(
                Phrase.of(
                        count(count, "reading shares its", "readings share their")
                                + " time with another, at most {} apart; the mean was taken.",
                        Quantity.temperatureDifference(apart)),
                Phrase.of("A clock that shows whole minutes or seconds repeats itself."),
                Phrase.of("Log with a finer clock if the heat is quick."));
    }

    private static Finding gap(int count, double from, double to, double before, double after) {
        return new Finding.Caution(
                Phrase.of(
                        count(count, "gap", "gaps")
                                + " in the log; the longest from {} to {}, {} before it and {} after.",
                        Quantity.time(from),
                        Quantity.time(to),
                        Quantity.temperature(before),
                        Quantity.temperature(after)),
                Phrase.of("A straight line was drawn across; a peak that fell into it is not seen."),
                Phrase.of("Log without a break, or believe the result no further than that."));
    }

    private static Finding hopeless(double missing, double whole) {
        return new Finding.Stop(
                Phrase.of(
                        "{} of the log's {} are gaps, more than {}.",
                        Quantity.time(missing),
                        Quantity.time(whole),
                        Quantity.time(FIGURES.number("gap-share") * whole)),
                Phrase.of("What it had in between is anybody's guess."),
                Phrase.of("Log again, or give the longest stretch without a gap as a log of its own."));
    }

    private static Finding tooFew(int count) {
        return new Finding.Stop(
                Phrase.of("The log has " + count(count, "reading", "readings") + " that can be used, fewer than 2."),
                Phrase.of("A history needs two moments at least."),
                Phrase.of("Check which column is the time and which the temperature."));
    }

    private static String count(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}
