package org.strawblue.core.spring.find;

import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.Pocket;

/** One thing about a pocket that could be changed, and which way. */
enum Knob {
    WIDER_BORE,
    THINNER_ROD,
    LONGER_AT_REST,
    SHORTER_AT_REST,
    LESS_TRAVEL,
    SOFTER_AT_REST,
    FIRMER_AT_REST,
    SOFTER_AT_FULL_TRAVEL,
    FIRMER_AT_FULL_TRAVEL;

    /** The pocket with this changed by a share of it; absent where it says nothing of this. */
    Optional<Pocket> turned(Pocket p, double share) {
        return switch (this) {
            case WIDER_BORE -> p.bore().isEmpty() ? Optional.empty() : Optional.of(bore(p, 1 + share));
            case THINNER_ROD -> p.rod().isEmpty() ? Optional.empty() : Optional.of(rod(p, 1 - share));
            case LONGER_AT_REST -> Optional.of(withLength(p, p.lengthAtRest() * (1 + share)));
            case SHORTER_AT_REST -> {
                double length = p.lengthAtRest() * (1 - share);
                yield length > p.travel() ? Optional.of(withLength(p, length)) : Optional.empty();
            }
            case LESS_TRAVEL -> Optional.of(travel(p, p.travel() * (1 - share)));
            case SOFTER_AT_REST -> p.forceAtRest().map(b -> rest(p, b.low() * (1 - share), b.high()));
            case FIRMER_AT_REST -> p.forceAtRest().map(b -> rest(p, b.low(), b.high() * (1 + share)));
            case SOFTER_AT_FULL_TRAVEL -> p.forceAtFullTravel().map(b -> full(p, b.low() * (1 - share), b.high()));
            case FIRMER_AT_FULL_TRAVEL -> p.forceAtFullTravel().map(b -> full(p, b.low(), b.high() * (1 + share)));
        };
    }

    /** What is to be done, with the figure that the changed pocket has. */
    Phrase words(Pocket changed) {
        return switch (this) {
            case WIDER_BORE -> said("open the bore to {}", length(changed.bore().orElse(0)));
            case THINNER_ROD -> said("thin the rod to {}", length(changed.rod().orElse(0)));
            case LONGER_AT_REST, SHORTER_AT_REST ->
                said("make the room {} long at rest", length(changed.lengthAtRest()));
            case LESS_TRAVEL -> said("keep the travel to {}", length(changed.travel()));
            case SOFTER_AT_REST, FIRMER_AT_REST ->
                said("be content with {} at rest", changed.forceAtRest().orElseThrow());
            case SOFTER_AT_FULL_TRAVEL, FIRMER_AT_FULL_TRAVEL ->
                said(
                        "be content with {} at full travel",
                        changed.forceAtFullTravel().orElseThrow());
        };
    }

    private static Phrase said(String template, Amount amount) {
        return Phrase.of(template, amount);
    }

    private static Quantity length(double metres) {
        return Quantity.length(metres);
    }

    private static Pocket bore(Pocket p, double times) {
        return p.between(OptionalDouble.of(p.bore().orElse(0) * times), p.rod());
    }

    private static Pocket rod(Pocket p, double times) {
        return p.between(p.bore(), OptionalDouble.of(p.rod().orElse(0) * times));
    }

    static Pocket withLength(Pocket p, double atRest) {
        return p.sized(atRest, p.travel());
    }

    private static Pocket travel(Pocket p, double travel) {
        return p.sized(p.lengthAtRest(), travel);
    }

    private static Pocket rest(Pocket p, double low, double high) {
        return p.wanting(Optional.of(new Band(Dimension.FORCE, low, high)), p.forceAtFullTravel());
    }

    private static Pocket full(Pocket p, double low, double high) {
        return p.wanting(p.forceAtRest(), Optional.of(new Band(Dimension.FORCE, low, high)));
    }
}
