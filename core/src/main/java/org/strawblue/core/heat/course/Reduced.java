package org.strawblue.core.heat.course;

import java.util.List;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.SteelHeat;

/**
 * The fast model of a course: the part's mean temperature by its enthalpy, m dH/dt = Q(t, T), and the rest of the section in
 * step with the heat that flows through it.
 *
 * <p>Explicit midpoint rule in the enthalpy, steps a fifth of the part's time constant or shorter. Range: parts whose inside
 * keeps pace, film × section / conductivity below about 1/2; a hard quench does not. Error against a full model: see
 * the rows fast-error of {@code fast.csv}.
 *
 * @param slowness heat the part holds over what it is reckoned to [1]
 */
public record Reduced(double slowness) {

    /** Steps per time constant of the part, and the most steps of one spell. */
    private static final int STEPS = 5;

    private static final int MOST = 1 << 14;

    public static Reduced plain() {
        return new Reduced(1);
    }

    /** One standard deviation of ln slowness against the full model [1]. */
    public static double timeError() {
        return Air.FAST.number("error-time");
    }

    /** One standard deviation of the rise above the start against the full model, as a share of it [1]. */
    public static double levelError() {
        return Air.FAST.number("error-level");
    }

    /** Why the fast model may not be asked of a course, and what to mind where it may. */
    public static List<Finding> findings(Course course) {
        List<Finding> stops = FastLimits.stops(course);
        return stops.isEmpty() ? FastLimits.cautions(course) : stops;
    }

    /** Temperatures at times [s] that rise and do not outlast the course. */
    public FastRun run(Course course, double[] times) {
        return new Walk(course, times, slowness).all();
    }

    /** One course under way. */
    private static final class Walk {

        private final Course course;
        private final Section section;
        private final double[] times;
        private final FastRun run;
        private final Flow flow = new Flow();
        private final double perKelvin;
        private double stored;
        private double kelvin;
        private int next;

        Walk(Course course, double[] times, double slowness) {
            this.course = course;
            this.section = Section.of(course.shape());
            this.times = times;
            this.perKelvin = SteelHeat.scale() * section.volume() * slowness;
            this.kelvin = course.start();
            this.stored = SteelHeat.at(kelvin);
            int n = times.length;
            this.run = new FastRun(times, new double[n], new double[n], new double[n]);
        }

        FastRun all() {
            while (next < times.length && times[next] <= 0) {
                note();
            }
            double start = 0;
            for (Spell spell : course.spells()) {
                if (spell.setting() instanceof Setting.AsLogged log) {
                    follow(new LogReader(log.log()), start, spell.seconds());
                } else {
                    stay(Surroundings.of(spell.setting(), section), start, spell.seconds());
                }
                start += spell.seconds();
            }
            while (next < times.length) {
                note();
            }
            return run;
        }

        private void follow(LogReader log, double start, double seconds) {
            flow.underside = 0;
            flow.top = 0;
            flow.core = 0;
            while (next < times.length && times[next] <= start + seconds) {
                kelvin = log.at(times[next] - start);
                note();
            }
            kelvin = log.at(seconds);
            stored = SteelHeat.at(kelvin);
        }

        private void stay(Surroundings around, double start, double seconds) {
            double now = 0;
            // the first look sets the lag of the surface
            around.into(flow, 0, kelvin);
            while (next < times.length && times[next] - start < seconds) {
                advance(around, now, Math.max(now, times[next] - start), seconds);
                now = Math.max(now, times[next] - start);
                around.into(flow, now, kelvin);
                note();
            }
            advance(around, now, seconds, seconds);
            around.into(flow, seconds, kelvin);
        }

        private void advance(Surroundings around, double from, double to, double spell) {
            double now = from;
            while (now < to) {
                around.into(flow, now, kelvin);
                double most = perKelvin / (SteelHeat.kelvinSlope(stored) * flow.slope * STEPS);
                double left = to - now;
                double step = Math.max(spell / MOST, left / Math.ceil(left / most));
                step(around, now, Math.min(step, left));
                now = step >= left ? to : now + step;
            }
        }

        private void step(Surroundings around, double now, double step) {
            double middle = SteelHeat.kelvin(stored + flow.heat * step / (2 * perKelvin));
            around.into(flow, now + step / 2, middle);
            stored += flow.heat * step / perKelvin;
            kelvin = SteelHeat.kelvin(stored);
        }

        private void note() {
            run.underside()[next] = kelvin + flow.underside;
            run.top()[next] = kelvin + flow.top;
            run.core()[next] = kelvin + flow.core;
            next++;
        }
    }
}
