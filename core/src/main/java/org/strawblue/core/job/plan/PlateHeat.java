package org.strawblue.core.job.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.evidence.sample.Distribution;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.heat.conduction.Conduction;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.FastRun;
import org.strawblue.core.heat.course.Reduced;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.ThermalHistory;
import org.strawblue.core.history.Trace;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/**
 * A part on a hot plate, as it is most likely to warm and as slowly and as quickly as one in ten does: the air gap under it and
 * the warmth of the air above the plate are what is least known.
 *
 * @param plate temperature of the plate under the part [K]
 */
record PlateHeat(PartShape shape, double plate, boolean covered) {

    /** How a part warms against what is likely. */
    enum Pace {
        SLOW,
        LIKELY,
        QUICK
    }

    private static final int ON_PLATE = 60;
    private static final int IN_AIR = 12;

    /** On the plate for a time [s], then in the air. */
    ThermalHistory pulledAfter(double seconds, Pace pace) {
        double cooling = Practice.plateCooling();
        double[] times = new double[ON_PLATE + IN_AIR + 1];
        for (int i = 0; i < times.length; i++) {
            // the start, where most happens, is looked at more closely
            double share = (double) i / ON_PLATE;
            times[i] = i <= ON_PLATE ? seconds * share * share : seconds + cooling * (i - ON_PLATE) / IN_AIR;
        }
        Spell air = new Spell(new Setting.InAir(Practice.room(), emissivity(Pace.LIKELY), 1), cooling);
        return two(run(List.of(new Spell(setting(pace), seconds), air), times));
    }

    /** On the plate all the time [s]. */
    ThermalHistory left(double seconds, Pace pace, int points) {
        double[] times = new double[points + 1];
        for (int i = 0; i <= points; i++) {
            times[i] = seconds * i / points;
        }
        return two(run(List.of(new Spell(setting(pace), seconds)), times));
    }

    /** The whole section at one moment [s]: underside, core, top [K]. */
    double[] section(double seconds) {
        FastRun run = run(List.of(new Spell(setting(Pace.LIKELY), seconds)), new double[] {0, seconds});
        return new double[] {run.underside()[1], run.core()[1], run.top()[1]};
    }

    /** Top of the part after a time [s] on the plate [K], with its interval. */
    Estimate after(double seconds, Place place) {
        double likely = end(seconds, Pace.LIKELY, place);
        double slow = end(seconds, Pace.SLOW, place);
        double quick = end(seconds, Pace.QUICK, place);
        return Estimate.of(Dimension.TEMPERATURE, likely, Math.min(likely, slow), Math.max(likely, quick), bases());
    }

    /** The working end after a time [s] on the plate [K], by the full model, with its interval. */
    Optional<Estimate> endAfter(double seconds) {
        Optional<Double> likely = workingEnd(seconds, Pace.LIKELY);
        Optional<Double> slow = workingEnd(seconds, Pace.SLOW);
        Optional<Double> quick = workingEnd(seconds, Pace.QUICK);
        return likely.flatMap(l -> slow.flatMap(
                s -> quick.map(q -> Estimate.of(Dimension.TEMPERATURE, l, Math.min(l, s), Math.max(l, q), bases()))));
    }

    private Optional<Double> workingEnd(double seconds, Pace pace) {
        Course course = new Course(shape, Practice.room(), List.of(new Spell(setting(pace), seconds)));
        return Conduction.run(course)
                .value()
                .flatMap(r -> r.history().at(Place.EDGE))
                .map(t -> t.at(seconds));
    }

    private double end(double seconds, Pace pace, Place place) {
        return left(seconds, pace, 2).at(place).orElseThrow().kelvin(2);
    }

    private FastRun run(List<Spell> spells, double[] times) {
        return Reduced.plain().run(new Course(shape, Practice.room(), spells), times);
    }

    private static ThermalHistory two(FastRun run) {
        return new ThermalHistory(Map.of(
                Place.UNDERSIDE, new Trace(run.seconds(), run.underside()),
                Place.TOP, new Trace(run.seconds(), run.top())));
    }

    private Setting setting(Pace pace) {
        double gap = of(Influence.CONTACT_GAP, pace == Pace.LIKELY ? pace : pace == Pace.SLOW ? Pace.QUICK : Pace.SLOW);
        Setting.OnPlate bare = Setting.OnPlate.steady(
                plate, gap, emissivity(Pace.LIKELY), of(Influence.ROOM_SHARE, pace), Practice.room());
        return covered ? bare.withCover() : bare;
    }

    private static double emissivity(Pace pace) {
        return of(Influence.PART_EMISSIVITY, pace);
    }

    private static double of(Influence influence, Pace pace) {
        Distribution d = Priors.usual().of(influence);
        return pace == Pace.LIKELY ? d.centre() : pace == Pace.SLOW ? d.low() : d.high();
    }

    static TreeSet<Basis> bases() {
        TreeSet<Basis> bases = new TreeSet<>();
        for (Influence i : List.of(Influence.CONTACT_GAP, Influence.ROOM_SHARE, Influence.PART_EMISSIVITY)) {
            bases.add(Priors.usual().basis(i));
        }
        return bases;
    }
}
