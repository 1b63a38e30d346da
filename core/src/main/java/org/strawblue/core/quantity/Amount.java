package org.strawblue.core.quantity;

/** A number that can stand in a sentence: a {@link Quantity} or a {@link Band}. */
public sealed interface Amount permits Quantity, Band {
    Dimension dimension();
}
