package org.strawblue.core.spring.family;

/** A spring of any family, its sizes taken as exact. */
public sealed interface Spring permits AxialSpring, TorsionSpring {}
