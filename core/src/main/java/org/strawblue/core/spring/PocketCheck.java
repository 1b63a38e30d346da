package org.strawblue.core.spring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** What a pocket cannot do, told before any drawer is opened. */
public final class PocketCheck {

    private PocketCheck() {}

    /** A stop for what contradicts itself or no wire can do; a note of what would do. */
    public static List<Finding> findings(Pocket pocket) {
        List<Finding> all = new ArrayList<>();
        if (pocket.lengthAtFullTravel() <= 0) {
            all.add(stop(
                    Phrase.of(
                            "Full travel leaves no room: {} of travel in a length of {}.",
                            Quantity.length(pocket.travel()),
                            Quantity.length(pocket.lengthAtRest())),
                    Phrase.of("The spring has to be longer than the travel by its coils."),
                    Phrase.of("Make the pocket deeper or the travel shorter.")));
        }
        double bore = pocket.bore().orElse(Double.POSITIVE_INFINITY);
        if (pocket.rod().orElse(0) >= bore) {
            all.add(stop(
                    Phrase.of(
                            "The rod fills the bore: rod {}, bore {}.",
                            length(pocket.rod().orElse(0)),
                            length(bore)),
                    Phrase.of("The spring lies between the two."),
                    Phrase.of("Make the bore wider or the rod thinner.")));
        }
        forces(pocket).ifPresent(all::add);
        tooHot(pocket).ifPresent(all::add);
        if (all.isEmpty()) {
            wires(pocket).ifPresent(all::add);
            screw(pocket).ifPresent(all::add);
            wet(pocket).ifPresent(all::add);
        }
        return all;
    }

    private static Optional<Finding> tooHot(Pocket pocket) {
        double most = SpringMaterial.all().stream()
                .mapToDouble(SpringMaterial::hottest)
                .max()
                .orElseThrow();
        double hot = pocket.temperature().orElse(0);
        return hot > most
                ? Optional.of(stop(
                        Phrase.of("Too hot for any spring wire known here: {}.", Quantity.temperature(hot)),
                        Phrase.of("The best of them goes slack from {} on.", Quantity.temperature(most)),
                        Phrase.of("Keep the spring out of the heat, or use a weight or a lever in its place.")))
                : Optional.empty();
    }

    /** What a turn of the screw does, from the rate that the two forces ask for. */
    private static Optional<Finding> screw(Pocket pocket) {
        if (pocket.screw().isEmpty() || pocket.travel() == 0) {
            return Optional.empty();
        }
        PreloadScrew screw = pocket.screw().get();
        Optional<Band> rest = pocket.forceAtRest();
        Optional<Band> full = pocket.forceAtFullTravel();
        if (rest.isEmpty() || full.isEmpty()) {
            return Optional.empty();
        }
        double rate = (full.get().middle() - rest.get().middle()) / pocket.travel();
        return rate > 0
                ? Optional.of(new Finding.Note(
                        Phrase.of(
                                "A turn of the " + screw.thread() + " screw changes the force by about {}.",
                                Quantity.force(rate * screw.pitch())),
                        Phrase.of(
                                "Forces and travel ask for a rate of {}, and the screw goes {} in a turn.",
                                new Quantity(Dimension.STIFFNESS, rate),
                                length(screw.pitch())),
                        Phrase.of("Leave it a turn or two both ways; it also uses up room that the coils need.")))
                : Optional.empty();
    }

    private static Optional<Finding> wet(Pocket pocket) {
        return pocket.wet()
                ? Optional.of(new Finding.Note(
                        Phrase.of("Where it gets wet, a rusted spring breaks."),
                        Phrase.of("A pit in the wire multiplies the stress at the inside of the coil."),
                        Phrase.of(
                                "Take stainless or bronze, or pack the pocket with grease and look at it each year.")))
                : Optional.empty();
    }

    private static Optional<Finding> forces(Pocket pocket) {
        Optional<Band> rest = pocket.forceAtRest();
        Optional<Band> full = pocket.forceAtFullTravel();
        boolean falls = rest.isPresent()
                && full.isPresent()
                && full.get().high() <= rest.get().low();
        return falls
                ? Optional.of(stop(
                        Phrase.of(
                                "Force would have to fall as the spring is pressed: {} at rest, {} at full travel.",
                                rest.get(),
                                full.get()),
                        Phrase.of("A spring pushes harder the shorter it is."),
                        Phrase.of("Ask for more at full travel than at rest.")))
                : Optional.empty();
    }

    private static Optional<Finding> wires(Pocket pocket) {
        if (pocket.forceAtRest().isEmpty() && pocket.forceAtFullTravel().isEmpty()
                || pocket.bore().isEmpty() && pocket.rod().isEmpty()) {
            return Optional.empty();
        }
        Optional<Band> wires = WireRange.of(pocket);
        return Optional.of(wires.isPresent() ? would(wires.get()) : none());
    }

    private static Finding would(Band wires) {
        return new Finding.Note(
                Phrase.of("New music wire of {} could be wound to do this.", wires),
                Phrase.of("Within that, some coil that fits the room gives the forces without taking a set."),
                Phrase.of("Look first for springs of such wire."));
    }

    private static Finding none() {
        return stop(
                Phrase.of("No spring of round wire does this in so little room."),
                Phrase.of("Whatever the wire, it is too soft, goes solid or takes a set, even in the strongest wire."),
                Phrase.of("Give the spring more length or a wider bore, or ask for less force or travel."));
    }

    private static Finding stop(Phrase what, Phrase why, Phrase remedy) {
        return new Finding.Stop(what, why, remedy);
    }

    private static Quantity length(double metres) {
        return new Quantity(Dimension.LENGTH, metres);
    }
}
