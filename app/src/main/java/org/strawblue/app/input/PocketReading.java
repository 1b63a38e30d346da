package org.strawblue.app.input;

import java.util.Map;
import java.util.Optional;
import org.strawblue.core.job.PocketWish;
import org.strawblue.core.spring.Seating;

/** Reads one place for a spring. */
final class PocketReading {

    private static final Map<String, Seating> SEATINGS = Map.of(
            "flat", Seating.BOTH_FLAT,
            "flat and pivoted", Seating.FLAT_AND_PIVOTED,
            "pivoted", Seating.BOTH_PIVOTED,
            "flat and free", Seating.FLAT_AND_FREE);

    private final Section pocket;

    PocketReading(Section pocket) {
        this.pocket = pocket;
    }

    /** Absent where its sizes contradict each other. */
    Optional<PocketWish> wish() {
        Optional<Double> bore = pocket.si("bore");
        Optional<Double> rod = pocket.si("rod");
        Optional<Double> length = pocket.si("length at rest");
        Optional<Double> travel = pocket.si("travel");
        PocketWish wish = new PocketWish(
                pocket.text("name").orElse("spring"),
                PartReading.optional(bore),
                PartReading.optional(rod),
                PartReading.optional(length),
                PartReading.optional(travel),
                pocket.band("force at rest"),
                pocket.band("force at full travel"),
                pocket.word("seating").flatMap(w -> Optional.ofNullable(SEATINGS.get(w))),
                PartReading.optional(pocket.si("cycles")),
                PartReading.optional(pocket.si("temperature")));
        boolean possible =
                smaller("rod", rod, "bore", bore) & smaller("travel", travel, "length at rest", length) & forces(wish);
        return possible ? Optional.of(wish) : Optional.empty();
    }

    /** A compression spring pushes harder the further it is pushed. */
    private boolean forces(PocketWish p) {
        boolean falls = p.forceAtRest().isPresent()
                && p.forceAtFullTravel().isPresent()
                && p.forceAtFullTravel().get().high() < p.forceAtRest().get().low();
        if (falls) {
            pocket.desk()
                    .problem(
                            pocket.place("force at full travel"),
                            pocket.text("force at full travel").orElse(""),
                            "more than the force at rest, "
                                    + pocket.text("force at rest").orElse(""),
                            "Exchange the two, or check their units.");
        }
        return !falls;
    }

    private boolean smaller(String less, Optional<Double> small, String more, Optional<Double> large) {
        boolean wrong = small.isPresent() && large.isPresent() && small.get() >= large.get();
        if (wrong) {
            pocket.desk()
                    .problem(
                            pocket.place(less),
                            pocket.text(less).orElse(""),
                            less + " smaller than " + more + ", "
                                    + pocket.text(more).orElse(""),
                            "Check both and their units.");
        }
        return !wrong;
    }
}
