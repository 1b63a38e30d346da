package org.strawblue.core.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * T = T₀ (d/d₀)^(log₂ k) g: torque of a locked screw.
 *
 * <p>T₀ torque of the reference screw of diameter d₀ [N·m, m], d largest diameter [m], k torque at twice the diameter [1], g
 * share by the gap [1]. Fluid V = π d L f, L length engaged, f film [m]. Times grow by a factor for each step of cold. Range:
 * M2 to M12, told for degreased screws; half to double. Source: {@code locking.csv}, {@code practice.csv}.
 *
 * @param breakLoose torque that breaks it loose [N·m]
 * @param runOn torque that turns it on [N·m]
 * @param drops of fluid [1]
 * @param fixture time until it may be handled [s]
 * @param fullCure time to full strength [s]
 * @param twistsOff torque at which the screw itself yields in torsion [N·m]
 */
public record Locking(
        Estimate breakLoose, Estimate runOn, Estimate drops, Estimate fixture, Estimate fullCure, Estimate twistsOff) {

    private static final double CUBIC_MM = 1e-9;

    public static Answer<Locking> of(Lock lock) {
        List<Finding> findings = new ArrayList<>(LockingFindings.of(lock));
        double share = gapShare(lock);
        if (share == 0) {
            findings.add(LockingFindings.gapTooWide(lock.gap().orElse(0)));
            return Answer.refused(findings);
        }
        Estimate loose = torque(lock, lock.strength().breakLoose() * share);
        Estimate twist = twist(lock);
        if (loose.high() > twist.value()) {
            findings.add(LockingFindings.twistsOff(lock, loose, twist));
        }
        return Answer.of(
                new Locking(
                        loose,
                        torque(lock, lock.strength().runOn() * share),
                        drops(lock),
                        slower(lock, lock.metal().fixture()),
                        slower(lock, Figures.ALL.estimate("full_cure", Dimension.TIME)),
                        twist),
                findings);
    }

    private static Estimate torque(Lock lock, double reference) {
        double exponent = Math.log(Figures.ALL.number("per_doubling")) / Math.log(2);
        double size = lock.thread().major() / Figures.ALL.si("reference_diameter", Dimension.LENGTH);
        Estimate spread = Figures.ALL.estimate("torque_spread", Dimension.NUMBER);
        double value = reference * Math.pow(size, exponent);
        return Estimate.of(
                Dimension.MOMENT,
                value,
                value * spread.low(),
                value * spread.high(),
                bases(
                        lock,
                        spread,
                        Figures.ALL.basis("per_doubling"),
                        lock.strength().basis()));
    }

    private static Estimate drops(Lock lock) {
        Estimate film = Figures.ALL.estimate("film", Dimension.LENGTH);
        double perFilm = Math.PI * lock.thread().major() * lock.engaged() / (Figures.ALL.number("drop") * CUBIC_MM);
        return Estimate.of(
                Dimension.NUMBER,
                film.value() * perFilm,
                film.low() * perFilm,
                film.high() * perFilm,
                bases(lock, film, Figures.ALL.basis("drop")));
    }

    /** A time at the room's temperature: k^(ΔT/step) as long. */
    private static Estimate slower(Lock lock, Estimate time) {
        Estimate factor = Figures.ALL.estimate("cold_factor", Dimension.NUMBER);
        double steps = Math.max(0, Figures.ALL.si("cure_room", Dimension.TEMPERATURE) - lock.room())
                / Figures.ALL.si("cold_step", Dimension.TEMPERATURE_DIFFERENCE);
        return Estimate.of(
                Dimension.TIME,
                time.value() * Math.pow(factor.value(), steps),
                time.low() * Math.pow(factor.low(), steps),
                time.high() * Math.pow(factor.high(), steps),
                bases(lock, time, Figures.ALL.basis("cold_factor")));
    }

    /** T = τ π d₃³/16, τ shear yield of a common screw, d₃ core diameter: where it begins to twist [N·m]. */
    private static Estimate twist(Lock lock) {
        double core = lock.thread().major()
                - Figures.ALL.number("core_depth") * lock.thread().pitch();
        double yield = Figures.ALL.si("screw_yield", Dimension.STRESS) * Figures.ALL.number("shear_over_tension");
        double torque = yield * Math.PI * core * core * core / 16;
        return Estimate.of(
                Dimension.MOMENT,
                torque,
                torque,
                torque,
                Figures.ALL.basis("screw_yield"),
                Figures.ALL.basis("core_depth"));
    }

    /** Between the rows of {@code thread-gap.csv}, straight. */
    private static double gapShare(Lock lock) {
        if (lock.gap().isEmpty()) {
            return 1;
        }
        double gap = lock.gap().getAsDouble() * 1000;
        double share = 1;
        double from = 0;
        for (Row row : Table.of(Locking.class, "thread-gap.csv").rows()) {
            double upto = row.number("gap_mm");
            if (gap <= upto) {
                return share + (row.number("share") - share) * (gap - from) / (upto - from);
            }
            share = row.number("share");
            from = upto;
        }
        return 0;
    }

    private static TreeSet<Basis> bases(Lock lock, Estimate one, Basis... more) {
        TreeSet<Basis> all = new TreeSet<>(one.bases());
        all.addAll(lock.thread().bases());
        all.addAll(List.of(more));
        return all;
    }
}
