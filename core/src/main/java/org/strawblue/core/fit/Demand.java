package org.strawblue.core.fit;

import org.strawblue.core.quantity.Band;

/**
 * What a chain has to do.
 *
 * @param allowed the gap that works [m]
 */
public record Demand(Chain chain, Band allowed) {}
