package org.strawblue.core.spring.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.PushReading;

/**
 * k = Σ (F − F̄)(L̄ − L) / Σ (L − L̄)²: rate from a spring pressed on a kitchen scale, the slope through all readings.
 *
 * <p>F force [N], L length [m]. dk = √(dF² + (k dL)²)/√(Σ (L − L̄)²) with the errors of one reading; where the readings
 * scatter more than that about their line, the scatter counts. Needs two lengths at least; best between 20 and 70 % of the
 * travel, pressed and released. Source: least squares; shop practice.
 */
public final class PushTest {

    private static final double SCALE = Practice.OF.si("scale_error", Dimension.FORCE);
    private static final double LENGTH = Practice.OF.si("length_error", Dimension.LENGTH);
    private static final double FROM = Practice.OF.number("travel_from");
    private static final double UPTO = Practice.OF.number("travel_upto");

    private PushTest() {}

    /** [N/m]; absent where there are no two lengths. */
    public static Optional<Estimate> rate(List<PushReading> readings) {
        double length =
                readings.stream().mapToDouble(PushReading::length).average().orElse(0);
        double force =
                readings.stream().mapToDouble(PushReading::force).average().orElse(0);
        double square = 0;
        double product = 0;
        for (PushReading r : readings) {
            square += (r.length() - length) * (r.length() - length);
            product += (r.force() - force) * (length - r.length());
        }
        if (readings.size() < 2 || !(square > LENGTH * LENGTH) || !(product > 0)) {
            return Optional.empty();
        }
        double rate = product / square;
        double half = Math.max(readingError(rate), scatter(readings, rate, length, force)) / Math.sqrt(square);
        return Optional.of(Estimate.of(
                Dimension.STIFFNESS,
                rate,
                rate - half,
                rate + half,
                Practice.OF.basis("push test on a kitchen scale", "scale_error")));
    }

    /** Error of one reading as a force [N]. */
    private static double readingError(double rate) {
        return Math.hypot(SCALE, rate * LENGTH);
    }

    private static double scatter(List<PushReading> readings, double rate, double length, double force) {
        if (readings.size() < 3) {
            return 0;
        }
        double square = 0;
        for (PushReading r : readings) {
            double off = r.force() - force - rate * (length - r.length());
            square += off * off;
        }
        return Math.sqrt(square / (readings.size() - 2));
    }

    /** What makes a test say less than it might. */
    public static List<Finding> findings(List<PushReading> readings, double free, double solid) {
        List<Finding> all = new ArrayList<>();
        double travel = free - solid;
        boolean outside = readings.stream()
                .map(r -> (free - r.length()) / travel)
                .anyMatch(share -> share < FROM || share > UPTO);
        if (outside && travel > 0) {
            all.add(new Finding.Note(
                    Phrase.of("Some readings lie near the ends of its travel."),
                    Phrase.of("First its end coils settle, at last its coils begin to touch; both bend the line."),
                    Phrase.of(
                            "Read between {} and {} long.",
                            Quantity.length(free - UPTO * travel),
                            Quantity.length(free - FROM * travel))));
        }
        return all;
    }
}
