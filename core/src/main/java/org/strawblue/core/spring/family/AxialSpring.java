package org.strawblue.core.spring.family;

/** A spring that is pushed or pulled along a line. Deflection counts from free [m]. */
public sealed interface AxialSpring extends Spring
        permits HelicalSpring, ExtensionSpring, DiscSpring, DiscStack, ClickSpring, Nest, SeriesStack {

    /** [N] at a deflection [m] of no more than {@link #greatestDeflection()}. */
    double force(double deflection);

    /** The stress that decides whether it takes a set, at a deflection [m] [Pa]. */
    double stress(double deflection);

    /** Deflection at which it touches or lies flat [m]; infinite where nothing stops it. */
    double greatestDeflection();
}
