package org.strawblue.core.job;

import org.strawblue.core.estimate.Estimate;

/** A number of the card under its name. */
public record Figure(String label, Estimate estimate) {}
