package org.strawblue.core.pyrometry;

import org.strawblue.core.source.Basis;

/** How far an indicator is out at one temperature: one standard deviation [K], and what that rests on. */
public record IndicationError(double sd, Basis basis) {}
