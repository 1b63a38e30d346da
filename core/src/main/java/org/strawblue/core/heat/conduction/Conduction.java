package org.strawblue.core.heat.conduction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.SteelHeat;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.CourseRun;
import org.strawblue.core.heat.course.EnergyBalance;
import org.strawblue.core.heat.course.SectionGrid;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.ThermalHistory;
import org.strawblue.core.history.Trace;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/**
 * The temperature history of a part on its way through a course, by conduction in its section or along its length.
 *
 * <p>Range: sections 0.5 to 100 mm, −80 to 1300 °C, courses to 48 h. Error: mesh 0.2 K, time 0.02 K; the model's own, see the
 * science book, is that of contact, films and emissivities. Source: see {@link HeatFlow}.
 */
public final class Conduction {

    private static final double TOLERANCE = 0.01;
    private static final int MOST_STEPS = 60_000;
    private static final int FRAMES = 12;
    private static final double WITHIN = Figures.OWN.si("within", Dimension.TEMPERATURE_DIFFERENCE);

    private static final double BALANCED = Figures.OWN.number("balanced");

    private final Course course;
    private final Mesh mesh;
    private final double tolerance;

    private Conduction(Course course, Fineness fineness, double tolerance) {
        this.course = course;
        this.mesh = Meshes.of(course, fineness);
        this.tolerance = tolerance;
    }

    /** How near its surroundings the slowest place of a part is when it has arrived [K]. */
    public static double within() {
        return WITHIN;
    }

    public static Answer<CourseRun> run(Course course) {
        return run(course, Fineness.USUAL, TOLERANCE);
    }

    /** @param tolerance of one step of the integrator [K] */
    public static Answer<CourseRun> run(Course course, Fineness fineness, double tolerance) {
        List<Finding> stops = CourseLimits.stops(course);
        return stops.isEmpty() ? new Conduction(course, fineness, tolerance).run() : Answer.refused(stops);
    }

    private Answer<CourseRun> run() {
        if (course.spells().size() == 1 && course.spells().get(0).setting() instanceof Setting.AsLogged logged) {
            return Answer.of(logged(logged.log()));
        }
        double[] y = new double[mesh.size()];
        Arrays.fill(y, SteelHeat.at(course.start()));
        Recorder recorder = null;
        double at = 0;
        int steps = 0;
        double last = course.start();
        List<Finding> findings = new ArrayList<>();
        for (Spell spell : course.spells()) {
            double hottest = SteelHeat.kelvin(Arrays.stream(y).max().orElseThrow());
            CoolingCaution.of(spell.setting(), hottest).ifPresent(findings::add);
            Surroundings around = Surroundings.of(spell.setting(), size(), spell.seconds());
            HeatFlow flow = new HeatFlow(mesh, around);
            double[] state = Arrays.copyOf(y, flow.size());
            if (flow.sags()) {
                state[flow.nodes()] = around.plate(0);
            }
            if (recorder == null) {
                recorder = new Recorder(mesh, flow, state, course.duration(), FRAMES);
            }
            recorder.spell(flow, at, state);
            int taken = new Rosenbrock(flow, mesh, tolerance).run(0, spell.seconds(), state, MOST_STEPS, recorder);
            if (taken < 0) {
                return Answer.refused(tooMany());
            }
            recorder.spellEnds(state);
            y = Arrays.copyOf(state, flow.nodes());
            steps += taken;
            at += spell.seconds();
            last = around.last();
        }
        ThermalHistory history = java.util.Objects.requireNonNull(recorder).history();
        EnergyBalance energy = recorder.energy();
        CourseRun run = new CourseRun(history, mesh.grid(), recorder.frames(), energy, arrival(history, last), steps);
        if (energy.error() > BALANCED) {
            findings.add(unbalanced(energy));
        }
        return Answer.of(run, findings);
    }

    private static CourseRun logged(Trace part) {
        SectionGrid point = new SectionGrid(SectionGrid.Kind.ROD, new double[] {0}, new double[] {0});
        return new CourseRun(
                ThermalHistory.even(part), point, List.of(), new EnergyBalance(0, 0, 0), OptionalDouble.empty(), 0);
    }

    /** Diameter or thickness, which the free film of air goes by [m]. */
    private double size() {
        return course.shape() instanceof PartShape.Tube tube
                ? tube.outside()
                : course.shape().section();
    }

    /** When the slowest place came near its surroundings for good. */
    private static OptionalDouble arrival(ThermalHistory history, double around) {
        double latest = 0;
        for (Trace trace : history.traces().values()) {
            int i = trace.size() - 1;
            if (Math.abs(trace.kelvin(i) - around) > WITHIN) {
                return OptionalDouble.empty();
            }
            while (i > 0 && Math.abs(trace.kelvin(i - 1) - around) <= WITHIN) {
                i--;
            }
            latest = Math.max(latest, trace.second(i));
        }
        return OptionalDouble.of(latest);
    }

    private static Finding unbalanced(EnergyBalance energy) {
        return new Finding.Caution(
                Phrase.of("The heat of this reckoning closes to {} only.", Quantity.fraction(energy.error())),
                Phrase.of(
                        "Heat in through the surface and heat found in the part should agree to {}.",
                        Quantity.fraction(BALANCED)),
                Phrase.of("Take its times with as much doubt."));
    }

    private static Finding tooMany() {
        return new Finding.Stop(
                Phrase.of("This course changes too often for the reckoning to follow it."),
                Phrase.of("The surroundings jump about far faster than the part can follow."),
                Phrase.of("Smooth the log, or take fewer of its points."));
    }
}
