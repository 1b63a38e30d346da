package org.strawblue.benchmarks;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.spring.BulkResult;
import org.strawblue.core.spring.BulkSearch;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.Seating;
import org.strawblue.core.spring.SpringColumns;
import org.strawblue.core.spring.SpringMaterial;

/**
 * Wall time of the full search, cuts included, for each number of springs given as an argument: first and best of five, and
 * what was found, so that another program that follows the same rules can be set beside it. With {@code --write FILE} the
 * drawer of that size is written as CSV in SI units instead.
 */
public final class SpringSearchSpeed {

    private static final int ROUNDS = 5;

    private SpringSearchSpeed() {}

    public static void main(String[] sizes) {
        for (String size : sizes) {
            SpringColumns springs = drawer(Integer.parseInt(size));
            double first = 0;
            double best = Double.POSITIVE_INFINITY;
            BulkResult found = null;
            for (int i = 0; i < ROUNDS; i++) {
                long start = System.nanoTime();
                found = BulkSearch.search(pocket(), springs);
                double seconds = (System.nanoTime() - start) / 1e9;
                first = i == 0 ? seconds : first;
                best = Math.min(best, seconds);
            }
            System.out.println(
                    String.format(Locale.ROOT, "%s %.4f %.4f %d %s", size, first, best, found.working(), sums(found)));
        }
    }

    private static String sums(BulkResult found) {
        double probability = 0;
        double removed = 0;
        for (int i = 0; i < found.size(); i++) {
            probability += found.probability(i);
            removed += found.removed(i);
        }
        return String.format(Locale.ROOT, "%.6g %.1f", probability, removed);
    }

    static Pocket pocket() {
        return new Pocket(
                "pocket",
                OptionalDouble.of(0.0096),
                OptionalDouble.of(0.004),
                0.026,
                0.008,
                Optional.of(new Band(Dimension.FORCE, 5, 10)),
                Optional.of(new Band(Dimension.FORCE, 12, 25)),
                Optional.of(Seating.BOTH_FLAT),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** Springs as they lie in drawers: index 5 to 14, gaps of a third of a wire to four wires, odd ends and wires. */
    static SpringColumns drawer(int n) {
        SplittableRandom random = new SplittableRandom(24);
        SpringColumns springs = SpringColumns.ofSize(n);
        for (int i = 0; i < n; i++) {
            double wire = Math.round(random.nextDouble(30, 160)) / 100.0 / 1000;
            double mean = wire * random.nextDouble(5, 14);
            double coils = Math.round(random.nextDouble(5, 40) * 4) / 4.0;
            springs.wire()[i] = wire;
            springs.outside()[i] = mean + wire;
            springs.coils()[i] = coils;
            springs.free()[i] = coils * Math.min(wire * random.nextDouble(1.3, 5), 0.7 * mean) + wire;
            int ends = random.nextInt(6);
            springs.first()[i] = (byte) (ends < 3 ? EndType.CLOSED_GROUND.ordinal() : ends == 5 ? -1 : ends - 2);
            springs.second()[i] = springs.first()[i];
            springs.material()[i] = (byte) random.nextInt(SpringMaterial.Key.values().length);
        }
        return springs;
    }
}
