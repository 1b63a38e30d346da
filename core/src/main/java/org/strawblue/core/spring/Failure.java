package org.strawblue.core.spring;

import java.util.Optional;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** Puts into words by how much a spring of given sizes breaks a limit of its pocket. */
record Failure(Coil coil, Duty duty, Optional<Cut> cut, String takenFor) {

    Phrase of(Limit limit) {
        Phrase plain = plain(limit);
        return cut.isPresent() ? join(Phrase.of("cut to {} coils: ", Quantity.number(coil.total())), plain) : plain;
    }

    private Phrase plain(Limit limit) {
        return switch (limit) {
            case REACHES ->
                Phrase.of("slack at rest: {} long where the pocket is {}", length(coil.free()), length(duty.atRest()));
            case FIRM_AT_REST -> soft("at rest", duty.restForce().low() - atRest());
            case SOFT_AT_REST ->
                Phrase.of(
                        "too strong by {} at rest",
                        force(atRest() - duty.restForce().high()));
            case FIRM_AT_FULL_TRAVEL -> soft("at full travel", duty.fullForce().low() - atFull());
            case SOFT_AT_FULL_TRAVEL ->
                Phrase.of(
                        "too strong by {} at full travel",
                        force(atFull() - duty.fullForce().high()));
            case CLEAR_OF_SOLID -> solid();
            case CLEARS_BORE -> bore();
            case GOES_OVER_ROD ->
                Phrase.of("will not go over the rod: {} inside, rod {}", length(coil.inside()), length(duty.rod()));
            case STAYS_STRAIGHT -> buckles();
            case TAKES_NO_SET ->
                Phrase.of(
                        "takes a set at full travel: {} in wire that bears {}" + takenFor,
                        stress(),
                        stress(duty.allowable()));
            case LASTS ->
                Phrase.of(
                        "tires: {} at full travel, time after time, in wire that bears {} once",
                        stress(),
                        stress(duty.allowable()));
        };
    }

    private Phrase soft(String where, double by) {
        String rest = cut.isPresent() ? "" : ", and softer still if cut";
        return Phrase.of("too soft by {} " + where + rest, force(by));
    }

    private Phrase solid() {
        return duty.atFull() < coil.solid()
                ? Phrase.of(
                        "solid before full travel: its coils touch at {}, full travel is {}",
                        length(coil.solid()),
                        length(duty.atFull()))
                : Phrase.of(
                        "all but solid at full travel: gaps of {} in all are left, {} are needed",
                        length(duty.atFull() - coil.solid()),
                        length(coil.leastGap(duty.moving())));
    }

    private Phrase bore() {
        return coil.outside() > duty.bore()
                ? Phrase.of(
                        "does not go into the bore: {} outside, bore {}", length(coil.outside()), length(duty.bore()))
                : Phrase.of(
                        "binds: grows to {} in a {} bore at full travel",
                        length(CompressionSpring.widestOutside(coil, duty.moduli(), duty.atFull())),
                        length(duty.bore()));
    }

    private Phrase buckles() {
        double critical = Buckling.criticalDeflection(duty.moduli(), coil.mean(), coil.free(), duty.seat())
                .orElse(0);
        return Phrase.of(
                "buckles: bows out once pressed by {}, full travel presses it by {}",
                length(critical),
                length(coil.free() - duty.atFull()));
    }

    private double atRest() {
        return coil.force(duty.moduli(), duty.atRest());
    }

    private double atFull() {
        return coil.force(duty.moduli(), duty.atFull());
    }

    private Quantity stress() {
        return stress(coil.stress(duty.moduli(), CompressionSpring.STRESS_FACTOR, duty.atFull()));
    }

    private static Quantity stress(double pascal) {
        return new Quantity(Dimension.STRESS, pascal);
    }

    private static Quantity length(double metres) {
        return Quantity.length(metres);
    }

    private static Quantity force(double newtons) {
        return Quantity.force(newtons);
    }

    private static Phrase join(Phrase first, Phrase second) {
        return new Phrase(
                first.template() + second.template(),
                java.util.stream.Stream.concat(first.amounts().stream(), second.amounts().stream())
                        .toList());
    }
}
