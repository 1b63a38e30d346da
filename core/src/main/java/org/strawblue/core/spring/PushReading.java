package org.strawblue.core.spring;

/** One look at scale and calliper: the length the spring is pressed to [m] and the force it pushes with [N]. */
public record PushReading(double length, double force) {}
