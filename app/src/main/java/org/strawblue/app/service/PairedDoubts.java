package org.strawblue.app.service;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.evidence.sample.Distribution;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.heat.conduction.Conduction;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.CourseRun;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.ThermalHistory;
import org.strawblue.core.history.Trace;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.watch.Goal;
import org.strawblue.core.watch.TemperWatch;

/**
 * Doubts where the fast model may not be asked, or does not know the places: the full model run once with a flame as strong, a
 * gap as narrow, an oven as hot and a bath as weak as one in ten is, and once the other way round. Where several of these act
 * at once the interval is wider than one of 80 %.
 */
final class PairedDoubts implements Doubts {

    private static final int HALVINGS = 12;

    private final HeatRequest request;
    private final Optional<CourseRun> cool;
    private final Optional<CourseRun> hot;
    private final Optional<TemperWatch> coolWatch;
    private final Optional<TemperWatch> hotWatch;

    PairedDoubts(HeatRequest request, double seconds) {
        this.request = request;
        Course course = request.takenOffAfter(seconds);
        this.cool = Conduction.run(moved(course, false)).value();
        this.hot = Conduction.run(moved(course, true)).value();
        this.coolWatch = cool.flatMap(this::watch);
        this.hotWatch = hot.flatMap(this::watch);
    }

    private Optional<TemperWatch> watch(CourseRun run) {
        return request.steel()
                .flatMap(s -> TemperWatch.of(
                                run.history().from(request.readFrom()), s, request.light(), request.chromium())
                        .value());
    }

    private static Course moved(Course course, boolean hotter) {
        return new Course(
                course.shape(),
                course.start(),
                course.spells().stream()
                        .map(s -> new Spell(moved(s.setting(), hotter), s.seconds()))
                        .toList());
    }

    private static Setting moved(Setting setting, boolean hotter) {
        if (setting instanceof Setting.Partly p) {
            return new Setting.Partly(moved(p.there(), hotter), p.from(), p.to(), moved(p.elsewhere(), hotter));
        }
        if (setting instanceof Setting.InFlame f) {
            return new Setting.InFlame(f.gas(), f.film() * factor(hotter), f.emissivity(), f.room());
        }
        if (setting instanceof Setting.InBath b) {
            return new Setting.InBath(b.film(), b.strength() * factor(!hotter), b.bath());
        }
        return setting instanceof Setting.OnPlate p ? plate(p, hotter) : around(setting, hotter);
    }

    private static Setting plate(Setting.OnPlate p, boolean hotter) {
        return new Setting.OnPlate(
                moved(p.plate(), Influence.PLATE_OFFSET, hotter),
                p.gap() * factor(Influence.CONTACT_GAP, !hotter),
                p.emissivity(),
                Math.min(1, p.roomShare() * factor(Influence.ROOM_SHARE, hotter)),
                p.filmFactor(),
                p.room(),
                p.covered());
    }

    private static Setting around(Setting setting, boolean hotter) {
        if (setting instanceof Setting.InOven o) {
            double moved = o.mean() + end(Influence.OVEN_OFFSET, hotter);
            return new Setting.InOven(
                    moved, o.swing(), o.period(), o.phase(), o.film() * factor(hotter), o.emissivity());
        }
        if (setting instanceof Setting.InSand s) {
            return new Setting.InSand(s.sand() + end(Influence.PLATE_OFFSET, hotter), s.film() * factor(hotter));
        }
        return setting instanceof Setting.InLoggedOven o
                ? new Setting.InLoggedOven(
                        moved(o.log(), Influence.SENSOR_OFFSET, hotter), o.film() * factor(hotter), o.emissivity())
                : setting;
    }

    private static double end(Influence influence, boolean more) {
        Distribution d = Priors.usual().of(influence);
        return more ? d.high() : d.low();
    }

    private static Trace moved(Trace trace, Influence offset, boolean hotter) {
        double[] kelvin = trace.kelvin();
        for (int i = 0; i < kelvin.length; i++) {
            kelvin[i] += end(offset, hotter);
        }
        return new Trace(trace.seconds(), kelvin);
    }

    private static double factor(boolean more) {
        return factor(Influence.FILM_FACTOR, more);
    }

    private static double factor(Influence influence, boolean more) {
        Distribution d = Priors.usual().of(influence);
        return (more ? d.high() : d.low()) / d.centre();
    }

    @Override
    public Estimate kelvin(Place place, double seconds, double value) {
        double low = at(cool, place, seconds, value);
        double high = at(hot, place, seconds, value);
        return Estimate.of(
                Dimension.TEMPERATURE,
                value,
                Math.min(value, Math.min(low, high)),
                Math.max(value, Math.max(low, high)),
                bases());
    }

    private static double at(Optional<CourseRun> run, Place place, double seconds, double otherwise) {
        return run.flatMap(r -> r.history().at(place)).map(t -> t.at(seconds)).orElse(otherwise);
    }

    @Override
    public Estimate hardness(Place place, double seconds, Estimate byLaw) {
        double low = hardness(hotWatch, place, seconds).map(Estimate::value).orElse(byLaw.low());
        double high = hardness(coolWatch, place, seconds).map(Estimate::value).orElse(byLaw.high());
        return byLaw.widened(Math.max(0, byLaw.value() - low), Math.max(0, high - byLaw.value()), bases());
    }

    private Optional<Estimate> hardness(Optional<TemperWatch> watch, Place place, double seconds) {
        return watch.flatMap(w -> w.at(place))
                .flatMap(p -> p.at(Math.max(seconds - request.readFrom(), 1e-3))
                        .hardness()
                        .value());
    }

    /** When the hot and the cool run have had as much of what is wanted. */
    @Override
    public Estimate moment(Goal goal, Place place, double best, double upTo) {
        double early = first(moved(request.leftOn(upTo), true), goal, place, upTo);
        double late = first(moved(request.leftOn(upTo), false), goal, place, upTo);
        return Estimate.of(
                Dimension.TIME,
                best,
                Math.min(best, Math.min(early, late)),
                Math.max(best, Math.max(early, late)),
                bases());
    }

    private double first(Course course, Goal goal, Place place, double upTo) {
        Optional<Trace> trace = Conduction.run(course)
                .value()
                .flatMap(r -> r.history().at(place))
                .map(this::read);
        double before = 0;
        double after = upTo;
        for (int k = 0; k < HALVINGS && trace.isPresent(); k++) {
            double half = (before + after) / 2;
            if (measure(trace.get().until(half), goal, place) >= goal.best()) {
                after = half;
            } else {
                before = half;
            }
        }
        return after;
    }

    private Trace read(Trace whole) {
        return request.mainFrom() > 0 ? whole.from(request.mainFrom()) : whole;
    }

    private double measure(Trace trace, Goal goal, Place place) {
        return request.steel()
                .flatMap(s -> TemperWatch.of(
                                new ThermalHistory(Map.of(place, trace)), s, request.light(), request.chromium())
                        .value())
                .flatMap(w -> w.at(place))
                .map(goal::of)
                .orElse(0.0);
    }

    @Override
    public Collection<Basis> bases() {
        TreeSet<Basis> bases = new TreeSet<>();
        bases.add(Priors.usual().basis(Influence.FILM_FACTOR));
        if (request.main().setting() instanceof Setting.OnPlate) {
            bases.add(Priors.usual().basis(Influence.CONTACT_GAP));
            bases.add(Priors.usual().basis(Influence.PLATE_OFFSET));
            bases.add(Priors.usual().basis(Influence.ROOM_SHARE));
        }
        if (request.main().setting() instanceof Setting.InOven) {
            bases.add(Priors.usual().basis(Influence.OVEN_OFFSET));
        }
        return bases;
    }
}
