package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/**
 * What becomes of a section in a bath: its cooling at each depth ({@link Cooling}) set against what the steel allows
 * ({@link Hardenability}).
 *
 * <p>The chance that a place is hard, 90 % martensite, is Φ((ln t_hard − ln t)/σ); σ takes in the spread of the steel's hardenability and of
 * the bath's strength.
 */
public final class Quenching {

    private final Grade grade;
    private final Hardenability steel;
    private final PartShape shape;
    private final Quenchant bath;
    private final Cooling cooling;
    private final double sd;

    private Quenching(Grade grade, Hardenability steel, PartShape shape, Quenchant bath, double hot) {
        this.grade = grade;
        this.steel = steel;
        this.shape = shape;
        this.bath = bath;
        Cooling.Body body = Bodies.of(shape);
        this.cooling = cool(body, bath, bath.strength().value(), hot);
        double weak = cool(body, bath, bath.strength().low(), hot).atCentre();
        double strong = cool(body, bath, bath.strength().high(), hot).atCentre();
        this.sd = Math.hypot(steel.lnSd(), Math.log(weak / strong) / (2 * Normal.HALF_OF_80));
    }

    private static Cooling cool(Cooling.Body body, Quenchant bath, double strength, double hot) {
        return Cooling.of(body, bath.film(), strength, hot, bath.bath().value());
    }

    /** What the quench leaves of a part of this grade, shape and hardening temperature [K]. */
    public static Answer<Quenched> of(Grade grade, PartShape shape, Quenchant bath, double hot) {
        return Hardenability.of(grade)
                .then(steel -> AsQuenchedHardness.of(grade)
                        .then(full -> RetainedAustenite.of(grade, bath.bath().value())
                                .then(retained -> {
                                    Quenching quenching = new Quenching(grade, steel, shape, bath, hot);
                                    return quenching.answer(full, retained);
                                })));
    }

    private Answer<Quenched> answer(Estimate full, Estimate retained) {
        List<Finding> notes = new ArrayList<>();
        steel.disagreement(grade).ifPresent(notes::add);
        return Hardness.of(grade, full).then(hardness -> {
            Estimate surface =
                    hardness.at(cooling.atSurface() / steel.critical().value(), sd, bases());
            Estimate centre = hardness.at(cooling.atCentre() / steel.critical().value(), sd, bases());
            double through = chance(cooling.atCentre());
            double skin = chance(cooling.atSurface());
            Quenched.Verdict verdict = verdict(through, skin, centre, surface);
            return Answer.of(new Quenched(surface, centre, retained, depth(), through, skin, verdict), notes);
        });
    }

    /** Chance that a place with this half-temperature time [s] is hard. */
    private double chance(double seconds) {
        double allowed = steel.critical().value() * Hardenability.hardOverHalf();
        return Normal.below(Math.log(allowed / seconds) / sd);
    }

    private static Quenched.Verdict verdict(double through, double skin, Estimate centre, Estimate surface) {
        double even = Figures.number("even");
        if (through >= Figures.number("sure")) {
            return Quenched.Verdict.THROUGH;
        }
        if (through >= even) {
            return Quenched.Verdict.LIKELY_THROUGH;
        }
        if (surface.high() < Figures.HARDENING.si("tool-hardness", Dimension.HARDNESS)) {
            return Quenched.Verdict.SOFT;
        }
        return skin >= even ? Quenched.Verdict.SHELL : Quenched.Verdict.UNSURE;
    }

    private Estimate depth() {
        double half = shape.section() / 2;
        double scale = half / cooling.size();
        double spread = Math.exp(Normal.HALF_OF_80 * sd);
        double critical = steel.critical().value();
        return Estimate.of(
                Dimension.LENGTH,
                Math.min(half, scale * cooling.depthWithin(critical)),
                Math.min(half, scale * cooling.depthWithin(critical / spread)),
                Math.min(half, scale * cooling.depthWithin(critical * spread)),
                bases());
    }

    private TreeSet<Basis> bases() {
        TreeSet<Basis> bases = new TreeSet<>(steel.critical().bases());
        bases.addAll(bath.bases());
        bases.add(UndercooledAustenite.BASIS);
        return bases;
    }
}
