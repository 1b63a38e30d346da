package org.strawblue.core.spring.wind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;
import org.strawblue.core.spring.AllowableStress;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.SpringMaterial;

/**
 * How a spring is wound so that it ends as {@code wanted}.
 *
 * @param wanted the finished spring, taken as exact
 * @param arbor [m]
 * @param turns to wind, more than the spring has since it unwinds when let go [1]
 * @param wire length with both tails and a reserve [m]
 * @param pitch to set in the lathe for the working coils [m]
 * @param lathe the nearest pitch that most lathes offer [m]
 * @param relief absent where no practice is known for this wire
 * @param asWound mean diameter before stress relief [m]
 */
public record WindingPlan(
        Coil wanted,
        SpringMaterial material,
        Estimate arbor,
        Estimate turns,
        double wire,
        double pitch,
        double lathe,
        Optional<StressRelief> relief,
        double asWound,
        List<Finding> findings) {

    private static final double YIELD = Practice.OF.number("yield");
    private static final double YIELD_LOW = Practice.OF.number("yield_low");
    private static final double YIELD_HIGH = Practice.OF.number("yield_high");
    private static final double TRIAL = Practice.OF.number("trial_error");
    private static final double TAIL = Practice.OF.si("tails", Dimension.LENGTH);
    private static final double RESERVE = Practice.OF.number("wire_reserve");

    public WindingPlan {
        findings = List.copyOf(findings);
    }

    /** Refused where nobody knows the strength of such wire. With a trial coil the arbor follows it instead of the band. */
    public static Answer<WindingPlan> of(Coil wanted, SpringMaterial material, Optional<TrialCoil> trial) {
        Optional<AllowableStress> strength = material.allowable(wanted.wire());
        if (strength.isEmpty()) {
            return Answer.refused(new Finding.Stop(
                    Phrase.of(
                            "No strength is known for " + material.name() + " of {}.", Quantity.length(wanted.wire())),
                    Phrase.of("How far wire springs back follows from its strength."),
                    Phrase.of("Wind a trial coil of music wire, or choose a wire that is in the tables.")));
        }
        Optional<StressRelief> relief = StressRelief.of(material);
        double asWound = relief.map(r -> r.before(wanted.mean())).orElse(wanted.mean());
        double tension = material.stiffness(wanted.wire()).moduli().tension();
        Estimate arbor = trial.isPresent()
                ? corrected(wanted, trial.get(), tension)
                : arbor(asWound, wanted.wire(), strength.get(), tension);
        return Answer.of(finish(wanted, material, arbor, relief, asWound, strength.get()));
    }

    private static WindingPlan finish(
            Coil wanted,
            SpringMaterial material,
            Estimate arbor,
            Optional<StressRelief> relief,
            double asWound,
            AllowableStress strength) {
        double wound = arbor.value() + wanted.wire();
        double closer = wound / wanted.mean();
        double pitch = wanted.pitch() * closer;
        return new WindingPlan(
                wanted,
                material,
                arbor,
                turns(wanted, arbor),
                wireLength(wanted),
                pitch,
                LathePitch.nearest(pitch),
                relief,
                asWound,
                WindingCautions.of(wanted, material, relief, strength));
    }

    private static Estimate arbor(double mean, double wire, AllowableStress strength, double tension) {
        double likely = Springback.arbor(mean, wire, YIELD * strength.strength(), tension);
        double thin = Springback.arbor(mean, wire, YIELD_HIGH * strength.strength(), tension);
        double thick = Springback.arbor(mean, wire, YIELD_LOW * strength.strength(), tension);
        List<Basis> bases = new ArrayList<>(strength.bases());
        bases.add(Practice.OF.basis("springback of round wire", "yield"));
        return Estimate.of(Dimension.LENGTH, likely, thin, thick, bases);
    }

    /** The trial shows what this very wire does: its yield, solved from the coil it gave. */
    private static Estimate corrected(Coil wanted, TrialCoil trial, double tension) {
        double yield = Springback.yield(trial.arbor(), trial.outside() - wanted.wire(), wanted.wire(), tension);
        double arbor = Springback.arbor(wanted.mean(), wanted.wire(), yield, tension);
        double error = TRIAL * arbor;
        return Estimate.of(
                Dimension.LENGTH,
                arbor,
                arbor - error,
                arbor + error,
                Practice.OF.basis("arbor from a trial coil", "trial_error"));
    }

    /** The curvature that springs back is lost on every turn alike, so turns grow as diameters do. */
    private static Estimate turns(Coil wanted, Estimate arbor) {
        double turns = wanted.total() * wanted.mean() / (arbor.value() + wanted.wire());
        double least = wanted.total() * wanted.mean() / (arbor.high() + wanted.wire());
        double most = wanted.total() * wanted.mean() / (arbor.low() + wanted.wire());
        return Estimate.of(Dimension.NUMBER, turns, least, most, arbor.bases());
    }

    /** √((π D)² + p²) for each working coil, π D for each closed one, tails and reserve [m]. */
    static double wireLength(Coil wanted) {
        double around = Math.PI * wanted.mean();
        double working = Math.hypot(around, wanted.pitch()) * wanted.active();
        double closed = around * (wanted.total() - wanted.active());
        return (working + closed) * (1 + RESERVE) + 2 * TAIL;
    }
}
