package org.strawblue.core.spring.find;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.spring.Buckling;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.Duty;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.Zimmerli;

/** One spring of two that work together, uncut, with what its own wire bears. */
record Member(CompressionSpring spring, Duty duty) {

    /** Absent where heat, its figures or an unknown strength rule it out. */
    static Optional<Member> of(MeasuredSpring measured, Pocket pocket) {
        CompressionSpring spring = CompressionSpring.of(measured, Optional.empty(), pocket.temperature());
        Coil coil = spring.nominal();
        boolean possible = coil.active() > 0
                && coil.pitch() >= coil.wire()
                && pocket.temperature().orElse(0) <= spring.material().hottest();
        return possible
                ? spring.allowable().map(a -> new Member(spring, Duty.of(pocket, spring.moduli(), a)))
                : Optional.empty();
    }

    static List<Member> of(List<MeasuredSpring> drawer, Pocket pocket) {
        return drawer.stream().flatMap(s -> of(s, pocket).stream()).toList();
    }

    Coil coil() {
        return spring.nominal();
    }

    double rate(Coil coil) {
        return coil.rate(duty.moduli());
    }

    /** Share left of the stress it bears at a force [N], below 0 where it takes a set. */
    double set(Coil coil, double force) {
        return 1 - CompressionSpring.STRESS_FACTOR.stress(force, coil.mean(), coil.wire()) / duty.allowable();
    }

    /** The same of what it bears time after time, between two forces [N]. */
    double lasts(Coil coil, double rest, double full) {
        if (!duty.moving()) {
            return Double.POSITIVE_INFINITY;
        }
        double one = CompressionSpring.STRESS_FACTOR.stress(1, coil.mean(), coil.wire());
        double amplitude = one * (full - rest) / 2;
        double mean = one * (full + rest) / 2;
        return (Zimmerli.greatestMean(amplitude, duty.strength()) - mean) / duty.strength();
    }

    /** What is left of a length beyond coils and least gaps, as a share of the solid length. */
    double clear(Coil coil, double length) {
        return (length - coil.solid() - coil.leastGap(duty.moving())) / coil.solid();
    }

    /** Widest outside diameter at a length [m], its growth only counted where it is pressed. */
    double widest(Coil coil, double length) {
        return CompressionSpring.widestOutside(coil, duty.moduli(), Math.min(length, coil.free()));
    }

    /** Free length it may have without bowing out at a length, less the one it has, as a share of it. */
    double straight(Coil coil, double length) {
        var critical = Buckling.criticalDeflection(duty.moduli(), coil.mean(), coil.free(), duty.seat());
        return critical.isEmpty()
                ? Double.POSITIVE_INFINITY
                : (critical.getAsDouble() - (coil.free() - length)) / coil.free();
    }
}
