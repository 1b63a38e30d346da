package org.strawblue.app.input;

import java.util.OptionalDouble;
import org.strawblue.core.history.Trace;

/**
 * The log of an oven, as read.
 *
 * @param name of the file and a mark of what is in it, so that the same log is known again
 * @param set what the oven was set to, where the log says so [K]
 */
public record LoggedOven(String name, Trace trace, OptionalDouble set) {}
