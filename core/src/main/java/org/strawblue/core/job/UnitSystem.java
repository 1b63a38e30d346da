package org.strawblue.core.job;

/** The units a person thinks in: what a bare number in a job file means, and how the card is printed. */
public enum UnitSystem {
    METRIC,
    INCH
}
