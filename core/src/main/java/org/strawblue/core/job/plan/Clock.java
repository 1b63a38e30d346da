package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.heat.Passing;
import org.strawblue.core.job.Picture;

/** The way to heat of a part that has one temperature throughout, as a curve of a clock. */
final class Clock {

    private Clock() {}

    /**
     * @param passing by rising temperature
     * @param end when the curve ends [s]: the last temperature is held until then
     */
    static Picture.ClockTrace trace(String name, List<Passing> passing, double end) {
        List<Picture.ClockPoint> points = new ArrayList<>();
        for (Passing p : passing) {
            if (p.seconds() < end) {
                points.add(new Picture.ClockPoint(
                        p.seconds(), p.kelvin(), slow(passing, p.seconds()), quick(passing, p.seconds())));
            }
        }
        points.add(new Picture.ClockPoint(end, likely(passing, end), slow(passing, end), quick(passing, end)));
        return new Picture.ClockTrace(name, points);
    }

    /** What it has at a time, by the likely course. */
    private static double likely(List<Passing> passing, double at) {
        return kelvin(passing, at, 0);
    }

    private static double slow(List<Passing> passing, double at) {
        return kelvin(passing, at, 1);
    }

    private static double quick(List<Passing> passing, double at) {
        return kelvin(passing, at, -1);
    }

    private static double kelvin(List<Passing> passing, double at, int pace) {
        for (int i = 1; i < passing.size(); i++) {
            double from = time(passing.get(i - 1), pace);
            double to = time(passing.get(i), pace);
            if (at < to) {
                double share = to > from && Double.isFinite(to) ? Math.max(0, (at - from) / (to - from)) : 0;
                return passing.get(i - 1).kelvin()
                        + share * (passing.get(i).kelvin() - passing.get(i - 1).kelvin());
            }
        }
        return passing.get(passing.size() - 1).kelvin();
    }

    private static double time(Passing p, int pace) {
        return pace == 0 ? p.seconds() : pace > 0 ? p.slowest() : p.quickest();
    }
}
