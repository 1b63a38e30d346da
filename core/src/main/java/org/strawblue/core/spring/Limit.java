package org.strawblue.core.spring;

/** What a spring in a pocket has to keep; each is judged as a margin that must not be below 0. */
public enum Limit {
    /** It must still touch both seats at rest. */
    REACHES,
    FIRM_AT_REST,
    SOFT_AT_REST,
    FIRM_AT_FULL_TRAVEL,
    SOFT_AT_FULL_TRAVEL,
    /** Coils and the least gaps between them must fit into the length at full travel. */
    CLEAR_OF_SOLID,
    CLEARS_BORE,
    GOES_OVER_ROD,
    STAYS_STRAIGHT,
    TAKES_NO_SET,
    LASTS
}
