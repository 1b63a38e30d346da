package org.strawblue.benchmarks;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.evidence.sample.Likelihood;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.steel.Steel;

/**
 * Time and memory of an ensemble of 5,000 histories: a pin twelve minutes on a plate, then in air. Prints, on one line, the
 * first draw [s], the median of nine further ones [s], heap held by one ensemble [MB] and one observation weighed anew [ms].
 * Run with -Xmx300m it shows that 300 MB suffice.
 */
public final class EnsembleSpeed {

    private static final int HISTORIES = 5000;
    private static final int ROUNDS = 9;
    private static final double ROOM = 293.15;

    private EnsembleSpeed() {}

    public static void main(String[] args) {
        double first = seconds(() -> draw(0).size());
        double[] further = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            long seed = i + 1;
            further[i] = seconds(() -> draw(seed).size());
        }
        Arrays.sort(further);
        long before = used();
        Ensemble ensemble = draw(1);
        double held = (used() - before) / 1e6;
        double[] weighed = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            double seen = 530 + i;
            weighed[i] = seconds(() -> (long) ensemble.weights(seen(seen)).effective());
        }
        System.out.printf(
                "%.3f %.3f %.1f %.2f%n",
                first, further[ROUNDS / 2], held, Arrays.stream(weighed).max().orElse(0) * 1e3);
    }

    private static Ensemble draw(long seed) {
        Setting plate = Setting.OnPlate.steady(563.15, 20e-6, 0.15, 0.3, ROOM).withCover();
        Course course = new Course(
                new PartShape.RoundBar(0.012, 0.06),
                ROOM,
                List.of(new Spell(plate, 720), new Spell(new Setting.InAir(ROOM, 0.15, 1), 120)));
        return Ensemble.draw(course, Optional.of(Steel.ofGrade("O1")), Priors.usual(), HISTORIES, seed, 300, 600);
    }

    /** A crayon-like look at the top after ten minutes. */
    private static Likelihood seen(double kelvin) {
        return (e, i) -> {
            double off = (e.kelvin(Place.TOP, 600, i) - kelvin) / 5;
            return -off * off / 2;
        };
    }

    private static double seconds(LongSupplier work) {
        long start = System.nanoTime();
        if (work.getAsLong() < 0) {
            throw new IllegalStateException("nothing done");
        }
        return (System.nanoTime() - start) / 1e9;
    }

    private static long used() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
