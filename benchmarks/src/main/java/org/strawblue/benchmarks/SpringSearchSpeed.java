package org.strawblue.benchmarks;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
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
 * Wall time of the full search, cuts included, for each number of springs given as an argument: first and best of five,
 * processor time of the best, and what was found, so that another program that follows the same rules can be set beside it. With {@code --write FILE SIZE} the
 * drawer of that size is written instead: seven columns of doubles one after another, little end first, SI units.
 */
public final class SpringSearchSpeed {

    private static final int ROUNDS = 5;

    private SpringSearchSpeed() {}

    public static void main(String[] sizes) throws IOException {
        if (sizes[0].equals("--write")) {
            write(drawer(Integer.parseInt(sizes[2])), Path.of(sizes[1]));
            return;
        }
        for (String size : sizes) {
            SpringColumns springs = drawer(Integer.parseInt(size));
            Timed first = Timed.search(springs);
            Timed best = first;
            for (int i = 1; i < ROUNDS; i++) {
                Timed next = Timed.search(springs);
                best = next.seconds() < best.seconds() ? next : best;
            }
            System.out.println(String.format(
                    Locale.ROOT,
                    "%s %.4f %.4f %.4f %d %s",
                    size,
                    first.seconds(),
                    best.seconds(),
                    best.processor(),
                    best.found().working(),
                    sums(best.found())));
        }
    }

    /** @param processor time of all processors together [s] */
    private record Timed(BulkResult found, double seconds, double processor) {

        static Timed search(SpringColumns springs) {
            double before = processorTime();
            long start = System.nanoTime();
            BulkResult found = BulkSearch.search(pocket(), springs);
            return new Timed(found, (System.nanoTime() - start) / 1e9, processorTime() - before);
        }

        private static double processorTime() {
            return ProcessHandle.current()
                            .info()
                            .totalCpuDuration()
                            .orElseThrow()
                            .toNanos()
                    / 1e9;
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

    private static void write(SpringColumns springs, Path file) throws IOException {
        ByteBuffer bytes =
                ByteBuffer.allocate(7 * Double.BYTES * springs.size()).order(ByteOrder.LITTLE_ENDIAN);
        for (double[] column : new double[][] {springs.wire(), springs.outside(), springs.free(), springs.coils()}) {
            for (double value : column) {
                bytes.putDouble(value);
            }
        }
        for (byte[] column : new byte[][] {springs.first(), springs.second(), springs.material()}) {
            for (byte value : column) {
                bytes.putDouble(value);
            }
        }
        Files.write(file, bytes.array());
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
