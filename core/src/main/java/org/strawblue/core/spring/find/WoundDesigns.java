package org.strawblue.core.spring.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.AllowableStress;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.CompressionSpring;
import org.strawblue.core.spring.Duty;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.FreeLengthRange;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.MeasurementErrors;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.SpringMaterial;
import org.strawblue.core.spring.SpringSearch;
import org.strawblue.core.spring.TradeWire;
import org.strawblue.core.spring.tolerance.MadeToStandard;

/** Springs that could be wound for a pocket of music wire in trade sizes, closed and ground, with what winding leaves open. */
final class WoundDesigns {

    private static final Ends ENDS = Ends.both(EndType.CLOSED_GROUND);
    private static final SpringMaterial MUSIC = SpringMaterial.of(SpringMaterial.Key.MUSIC);
    private static final double OUTSIDE = Practice.OF.number("wound_outside_error");
    private static final double FREE = Practice.OF.number("wound_free_error");
    private static final int DIAMETERS = 6;
    private static final int LEAST_ACTIVE = 3;
    private static final int MOST_ACTIVE = 25;
    private static final double INDEX_LOW = 4;
    private static final double INDEX_HIGH = 14;

    private final Pocket pocket;

    private WoundDesigns(Pocket pocket) {
        this.pocket = pocket;
    }

    /** The likeliest of each wire, the likeliest first; none where no force is asked for, for then all would do. */
    static List<Candidate> of(Pocket pocket, int most) {
        if (pocket.forceAtRest().isEmpty() && pocket.forceAtFullTravel().isEmpty()) {
            return List.of();
        }
        List<Candidate> all = new ArrayList<>();
        for (double wire : TradeWire.sizes()) {
            new WoundDesigns(pocket).best(wire).ifPresent(all::add);
        }
        all.sort(Comparator.comparingDouble(Candidate::probability).reversed());
        return all.stream().limit(most).map(c -> told(c, pocket)).toList();
    }

    private Optional<Candidate> best(double wire) {
        Optional<AllowableStress> stress = MUSIC.allowable(wire);
        if (stress.isEmpty()) {
            return Optional.empty();
        }
        Duty duty = Duty.of(pocket, MUSIC.stiffness(wire).moduli(), stress.get());
        double narrow = Math.max(duty.rod() * (1 + OUTSIDE) + 2 * wire, (INDEX_LOW + 1) * wire);
        double wide = Math.min(duty.bore(), (INDEX_HIGH + 1) * wire);
        Candidate best = null;
        for (int i = 0; i < DIAMETERS && wide > narrow; i++) {
            double outside = narrow + (wide - narrow) * (i + 0.5) / DIAMETERS;
            for (double active = LEAST_ACTIVE; active <= MOST_ACTIVE && active * wire < duty.atFull(); active++) {
                Optional<Candidate> next = design(duty, wire, outside, active);
                if (next.isPresent() && (best == null || next.get().probability() > best.probability())) {
                    best = next.get();
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private Optional<Candidate> design(Duty duty, double wire, double outside, double active) {
        Coil guess = Coil.of(wire, outside, duty.atRest() + wire, active + ENDS.inactive(), ENDS);
        FreeLengthRange range = FreeLengthRange.of(guess, duty);
        if (range.none() || Double.isInfinite(range.high())) {
            return Optional.empty();
        }
        MeasuredSpring spring = measured(wire, outside, (range.low() + range.high()) / 2, guess.total());
        CompressionSpring made = CompressionSpring.of(spring, Optional.empty(), pocket.temperature());
        double chance = SpringSearch.chance(made, pocket, true);
        return chance > 0 ? Optional.of(candidate(spring, chance)) : Optional.empty();
    }

    private static MeasuredSpring measured(double wire, double outside, double free, double coils) {
        MeasurementErrors errors = new MeasurementErrors(
                MadeToStandard.wire(wire),
                OUTSIDE * outside,
                FREE * free,
                MeasurementErrors.usual().coils());
        return new MeasuredSpring(
                "to be wound", 0, wire, outside, free, coils, Optional.of(ENDS), Optional.of(MUSIC.name()), errors, 1);
    }

    /** With the finer chance, for those that are told. */
    private static Candidate told(Candidate c, Pocket pocket) {
        CompressionSpring made = CompressionSpring.of(c.springs().get(0), Optional.empty(), pocket.temperature());
        return candidate(c.springs().get(0), SpringSearch.chance(made, pocket, false));
    }

    private static Candidate candidate(MeasuredSpring s, double chance) {
        return new Candidate(
                Candidate.Kind.WOUND,
                List.of(s),
                Optional.empty(),
                Phrase.of(
                        "wind it of {} music wire: {} outside, {} coils in all, {} long",
                        Quantity.length(s.wire()),
                        Quantity.length(s.outsideDiameter()),
                        Quantity.number(s.totalCoils()),
                        Quantity.length(s.freeLength())),
                chance,
                List.of(),
                List.of());
    }
}
