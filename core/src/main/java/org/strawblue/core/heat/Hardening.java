package org.strawblue.core.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.steel.CriticalPoints;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.HardeningHeat;
import org.strawblue.core.steel.MartensiteStart;
import org.strawblue.core.steel.Property;
import org.strawblue.core.steel.QuenchFits;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenched;
import org.strawblue.core.steel.Quenching;

/** Hardening of one part: whether it can be done with these means, and how. */
public final class Hardening {

    private Hardening() {}

    /** How to harden this part with these means; or why it cannot be hardened this way, and what to do instead. */
    public static Answer<HardeningPlan> plan(Grade grade, PartShape shape, Quenchant quench, HeatSource source) {
        List<Finding> stops = new ArrayList<>(HardeningStops.steel(grade));
        if (stops.isEmpty()) {
            stops.addAll(HardeningStops.quench(grade, shape, quench));
        }
        return stops.isEmpty()
                ? CriticalPoints.of(grade).then(points -> plan(grade, shape, quench, source, points))
                : Answer.refused(stops);
    }

    private static Answer<HardeningPlan> plan(
            Grade grade, PartShape shape, Quenchant quench, HeatSource source, CriticalPoints points) {
        Estimate window = HardeningHeat.window(grade, points);
        Estimate soak = HardeningHeat.soak(grade);
        List<Finding> stops = HardeningStops.heat(grade, source, window, soak);
        if (!stops.isEmpty()) {
            return Answer.refused(stops);
        }
        double room = SteelProperties.HEAT.si("room", Dimension.TEMPERATURE);
        return HeatThrough.time(shape, source, room, window.value(), HeatThrough.Surface.SCALING)
                .then(through -> MartensiteStart.of(grade)
                        .then(ms -> Quenching.of(grade, shape, quench, window.value())
                                .then(quenched -> answer(new HardeningPlan(
                                        grade,
                                        shape,
                                        quench,
                                        source,
                                        grade.found(Property.PREHEAT),
                                        grade.found(Property.SECOND_PREHEAT),
                                        window,
                                        through,
                                        soak,
                                        points,
                                        points.magnetLetsGo(grade.composition().c()),
                                        ms,
                                        toBath(shape, quench, window, points),
                                        quenched)))));
    }

    private static Answer<HardeningPlan> answer(HardeningPlan plan) {
        Optional<Finding> soft = HardeningStops.soft(plan);
        return soft.isPresent() ? Answer.refused(soft.get()) : Answer.of(plan, HardeningCautions.of(plan));
    }

    /** Time [s] in still air from the hardening temperature down to where pearlite begins to form; none if air is the quench. */
    private static Optional<Estimate> toBath(
            PartShape shape, Quenchant quench, Estimate window, CriticalPoints points) {
        if (quench.family() == Quenchant.Family.AIR) {
            return Optional.empty();
        }
        Estimate under = SteelProperties.HEAT.estimate("undercool-plain", Dimension.TEMPERATURE_DIFFERENCE);
        double from = window.value();
        double floor = points.ac1().value();
        Estimate middle = AirCooling.time(shape, from, floor - under.value());
        TreeSet<Basis> bases = new TreeSet<>(middle.bases());
        bases.addAll(points.ac1().bases());
        bases.addAll(under.bases());
        return Optional.of(Estimate.of(
                Dimension.TIME,
                middle.value(),
                AirCooling.time(shape, from, floor - under.low()).low(),
                AirCooling.time(shape, from, floor - under.high()).high(),
                bases));
    }

    /**
     * The best of the quenches at hand for this part: the chance that surface and centre come out hard, less what the quench
     * costs in cracks, warping and smoke.
     */
    public static Answer<Quenchant> chooseQuench(Grade grade, PartShape shape, List<Quenchant> available) {
        List<Finding> steel = HardeningStops.steel(grade);
        if (!steel.isEmpty()) {
            return Answer.refused(steel);
        }
        return available.stream()
                .filter(q -> HardeningStops.quench(grade, shape, q).isEmpty())
                .filter(q -> worth(grade, shape, q) > 0)
                .max(Comparator.comparingDouble(q -> worth(grade, shape, q)))
                .map(q -> Answer.of(q))
                .orElseGet(() -> Answer.refused(HardeningStops.noQuench(grade)));
    }

    private static double worth(Grade grade, PartShape shape, Quenchant quench) {
        double chance = CriticalPoints.of(grade)
                .then(points -> Quenching.of(
                        grade,
                        shape,
                        quench,
                        HardeningHeat.window(grade, points).value()))
                .value()
                .filter(q -> q.verdict() != Quenched.Verdict.SOFT)
                .map(q -> (q.through() + q.skin()) / 2)
                .orElse(0.0);
        return chance - QuenchFits.cost(grade, quench.family());
    }
}
