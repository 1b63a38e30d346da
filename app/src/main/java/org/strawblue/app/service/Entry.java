package org.strawblue.app.service;

import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.job.Picture;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** One line of a {@link Sheet}. */
public sealed interface Entry {

    /** Its name in JSON and in tables. */
    String key();

    /** Its name for people. */
    String label();

    record Number(String key, String label, Estimate estimate) implements Entry {}

    /** Two limits that are given, not estimated. */
    record Limits(String key, String label, Band band) implements Entry {}

    /** A number that was given. */
    record Given(String key, String label, Quantity quantity) implements Entry {}

    record Words(String key, String label, Phrase phrase) implements Entry {}

    /** Temperature against time. */
    record Plot(String key, String label, Picture.HeatClock clock) implements Entry {}

    /** @param hex for a screen, "#rrggbb" */
    record Colour(String key, String label, String name, String hex) implements Entry {}
}
