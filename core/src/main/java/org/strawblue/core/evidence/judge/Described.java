package org.strawblue.core.evidence.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** What an observation is called in a sentence. */
public final class Described {

    private Described() {}

    public static String of(Observation seen) {
        if (seen instanceof Observation.Crayon o) {
            return "The crayon that was " + word(o.melt());
        }
        if (seen instanceof Observation.Infrared o) {
            return "The infrared gun on " + o.surface().words();
        }
        if (seen instanceof Observation.Colour o) {
            return "The colour " + o.word();
        }
        if (seen instanceof Observation.PartReads o) {
            return "The " + o.by().words() + " on the part";
        }
        if (seen instanceof Observation.SourceReads o) {
            return "The " + o.by().words() + " of the heat source";
        }
        if (seen instanceof Observation.Magnet o) {
            return o.holds() ? "The magnet that held" : "The magnet that let go";
        }
        if (seen instanceof Observation.File o) {
            return "The file that " + word(o.bite())
                    + (o.state() == Observation.State.QUENCHED ? " before tempering" : "");
        }
        if (seen instanceof Observation.Indent) {
            return "The comparison of dents";
        }
        if (seen instanceof Observation.Tester) {
            return "The hardness tester";
        }
        if (seen instanceof Observation.SnappedCoupon o) {
            return o.look() == Observation.Break.BENDS ? "The coupon that bent" : "The coupon that snapped";
        }
        return "The trial fit";
    }

    private static String word(Observation.Melt melt) {
        return switch (melt) {
            case DRY -> "dry";
            case BARELY -> "barely melting";
            case SLICK -> "slick";
        };
    }

    private static String word(Observation.Bite bite) {
        return switch (bite) {
            case BITES -> "bit";
            case BARELY -> "barely bit";
            case SKATES -> "skated";
        };
    }

    /** A sentence about a look that begins with the figure it had. */
    public static Phrase with(Observation look, String sentence, Amount... amounts) {
        Optional<Amount> figure = figure(look);
        if (figure.isEmpty()) {
            return Phrase.of(sentence, amounts);
        }
        List<Amount> all = new ArrayList<>(List.of(amounts));
        all.add(0, figure.get());
        return new Phrase("{}: " + sentence, all);
    }

    private static Optional<Amount> figure(Observation look) {
        if (look instanceof Observation.Crayon o) {
            return Optional.of(Quantity.temperature(o.rating()));
        }
        if (look instanceof Observation.Infrared o) {
            return Optional.of(Quantity.temperature(o.reading()));
        }
        if (look instanceof Observation.PartReads o) {
            return Optional.of(Quantity.temperature(o.reading()));
        }
        if (look instanceof Observation.SourceReads o) {
            return Optional.of(Quantity.temperature(o.reading()));
        }
        if (look instanceof Observation.File o && o.graded()) {
            return Optional.of(Quantity.hardness(o.level()));
        }
        return look instanceof Observation.Tester o ? Optional.of(Quantity.hardness(o.reading())) : Optional.empty();
    }
}
