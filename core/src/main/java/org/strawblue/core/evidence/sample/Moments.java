package org.strawblue.core.evidence.sample;

import java.util.TreeSet;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Spell;

/** The times [s] at which an ensemble keeps its histories: denser where a spell begins, and those asked for. */
final class Moments {

    private static final int FEWEST = 96;
    private static final int MOST = 384;
    /** Usual distance of the moments [s]. */
    private static final int APART = 30;

    private Moments() {}

    static double[] of(Course course, double... asked) {
        TreeSet<Double> times = new TreeSet<>();
        times.add(0.0);
        double all = course.duration();
        int points = (int) Math.max(FEWEST, Math.min(MOST, all / APART));
        double start = 0;
        for (Spell spell : course.spells()) {
            int here = Math.max(FEWEST / 4, (int) (points * spell.seconds() / all));
            for (int i = 1; i <= here; i++) {
                double share = (double) i / here;
                times.add(start + spell.seconds() * share * (1 + share) / 2);
            }
            start += spell.seconds();
        }
        for (double time : asked) {
            times.add(Math.max(0, Math.min(all, time)));
        }
        return times.stream().mapToDouble(t -> t).toArray();
    }
}
