package org.strawblue.app.input;

import java.util.Map;
import java.util.Optional;
import org.strawblue.core.job.PocketWish;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.spring.Feel;
import org.strawblue.core.spring.PreloadScrew;
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
                force("force at rest"),
                force("force at full travel"),
                seating(),
                PartReading.optional(pocket.si("cycles")),
                PartReading.optional(pocket.si("temperature")),
                screw(),
                pocket.word("rust").map("yes"::equals).orElse(false));
        boolean possible =
                smaller("rod", rod, "bore", bore) & smaller("travel", travel, "length at rest", length) & forces(wish);
        return possible ? Optional.of(wish) : Optional.empty();
    }

    /** A band of forces, or how it should feel: "firm by thumb". */
    private Optional<Band> force(String key) {
        Optional<Band> felt =
                pocket.text(key).flatMap(t -> Lexicon.of("feel").find(t)).flatMap(Feel::force);
        return felt.isPresent() ? felt : pocket.band(key);
    }

    private Optional<Seating> seating() {
        return pocket.word("seating").map(SEATINGS::get);
    }

    private Optional<PreloadScrew> screw() {
        Optional<String> text = pocket.text("screw").filter(t -> !QuantityReader.notKnown(t));
        Optional<PreloadScrew> screw = text.flatMap(PreloadScrew::of);
        if (text.isPresent() && screw.isEmpty()) {
            pocket.desk()
                    .problem(
                            pocket.place("screw"),
                            text.get(),
                            "a thread such as M6, M6x0.75 or 1/4-20",
                            "Name the thread of the preload screw by size and pitch.");
        }
        return screw;
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
