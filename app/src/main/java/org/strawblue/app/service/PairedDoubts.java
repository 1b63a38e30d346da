package org.strawblue.app.service;

import java.util.Collection;
import java.util.List;
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
import org.strawblue.core.history.Trace;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.watch.Goal;
import org.strawblue.core.watch.TemperWatch;

/**
 * Doubts where the fast model may not be asked: the full model run once with a flame as strong and a bath as weak as one in ten
 * is, and once the other way round.
 */
final class PairedDoubts implements Doubts {

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
        return setting;
    }

    private static double factor(boolean more) {
        Distribution film = Priors.usual().of(Influence.FILM_FACTOR);
        return (more ? film.high() : film.low()) / film.centre();
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

    /** When the hot and the cool run are as hot as the reckoned one is at its best moment: its metal decides, not its clock. */
    @Override
    public Estimate moment(Goal goal, Place place, double best, double upTo) {
        Optional<CourseRun> likely = Conduction.run(request.leftOn(upTo)).value();
        Optional<CourseRun> slow =
                Conduction.run(moved(request.leftOn(upTo), false)).value();
        Optional<CourseRun> quick =
                Conduction.run(moved(request.leftOn(upTo), true)).value();
        double from = request.mainFrom();
        double wanted = at(likely, place, from + best, 0);
        double early = first(quick, place, from, wanted, upTo);
        double late = first(slow, place, from, wanted, upTo);
        return Estimate.of(
                Dimension.TIME,
                best,
                Math.min(best, Math.min(early, late)),
                Math.max(best, Math.max(early, late)),
                bases());
    }

    private static double first(Optional<CourseRun> run, Place place, double from, double wanted, double upTo) {
        Optional<Trace> trace = run.flatMap(r -> r.history().at(place));
        if (trace.isEmpty()) {
            return upTo;
        }
        for (int i = 0; i < trace.get().size(); i++) {
            if (trace.get().second(i) >= from && trace.get().kelvin(i) >= wanted) {
                return trace.get().second(i) - from;
            }
        }
        return upTo;
    }

    @Override
    public Collection<Basis> bases() {
        TreeSet<Basis> bases = new TreeSet<>();
        List.of(Influence.FILM_FACTOR, Influence.PART_EMISSIVITY)
                .forEach(i -> bases.add(Priors.usual().basis(i)));
        return bases;
    }
}
