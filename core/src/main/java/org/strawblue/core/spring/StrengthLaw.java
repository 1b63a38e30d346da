package org.strawblue.core.spring;

import java.util.Optional;

/** Least tensile strength of a spring wire, which falls with its diameter. */
public interface StrengthLaw {

    /** The strength at a wire diameter [m]; absent outside the sizes the law covers. */
    Optional<Strength> at(double wire);
}
