package org.strawblue.core.estimate;

import java.util.Optional;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** The range in which a law holds, for one of its inputs. */
public record Validity(String law, String input, Band range) {

    /** A stop that gives the value and both limits, where the value lies outside. */
    public Optional<Finding> check(double value) {
        return range.contains(value) ? Optional.empty() : Optional.of(outside(value));
    }

    private Finding outside(double value) {
        return new Finding.Stop(
                Phrase.of(
                        input + " of {} lies outside {} to {}",
                        new Quantity(range.dimension(), value),
                        new Quantity(range.dimension(), range.low()),
                        new Quantity(range.dimension(), range.high())),
                Phrase.of(law + " is known to hold only between these limits, and is not stretched beyond them."),
                Phrase.of("Choose a value within the limits, or measure on a test piece."));
    }
}
