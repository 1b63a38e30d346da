package org.strawblue.core.part;

import java.util.Optional;
import org.strawblue.core.quantity.Band;

/**
 * One size of a part that matters.
 *
 * @param nominal the size on the drawing [m]
 * @param limits the sizes allowed when all is done [m]; absent where none were asked for
 */
public record Feature(String name, Kind kind, double nominal, Optional<Band> limits) {

    /** What is measured, and so how it is cut, how it changes when hardened and how it is finished. */
    public enum Kind {
        /** An outside diameter. */
        OUTSIDE,
        /** A round hole. */
        BORE,
        /** A length between two ends or shoulders. */
        LENGTH,
        /** A thickness between two flat faces. */
        FLAT
    }

    public Feature {
        if (!(nominal > 0)) {
            throw new IllegalArgumentException("a size must be greater than 0, not " + nominal);
        }
    }
}
