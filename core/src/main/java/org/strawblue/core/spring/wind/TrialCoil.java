package org.strawblue.core.spring.wind;

/**
 * A few coils wound to see how the wire springs back.
 *
 * @param arbor they were wound on [m]
 * @param outside diameter they have when let go and, if that is done, stress relieved [m]
 */
public record TrialCoil(double arbor, double outside) {}
