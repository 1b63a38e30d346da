package org.strawblue.core.fit;

/**
 * One size in a chain.
 *
 * @param part which size; links of one name in several chains are one and the same piece of metal
 * @param weight how much the chain's result changes with it: +1 where it opens the gap, −1 where it closes it
 */
public record Link(String part, double weight, Spread spread) {

    public static Link plus(String part, Spread spread) {
        return new Link(part, 1, spread);
    }

    public static Link minus(String part, Spread spread) {
        return new Link(part, -1, spread);
    }
}
