package org.strawblue.core.job;

import org.strawblue.core.quantity.Phrase;

/**
 * A thing to have at hand before starting.
 *
 * @param inShop whether the shop is known to have it; if not, it goes on the shopping list
 */
public record Item(Phrase what, Phrase why, boolean inShop) {}
