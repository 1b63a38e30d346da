package org.strawblue.core.spring;

import org.strawblue.core.source.Basis;

/**
 * K = 1 + 0.5/C: direct shear alone, the coil's curvature left out.
 *
 * <p>C spring index [1]. For the mean stress in fatigue, and for springs whose set has been taken out. Source:
 * engineering textbooks.
 */
public record DirectShear() implements StressFactor {

    private static final double SHEAR = Figures.FORMULAS.number("direct_shear");

    @Override
    public double at(double index) {
        return 1 + SHEAR / index;
    }

    @Override
    public Basis basis() {
        return Figures.FORMULAS.basis("stress factor of direct shear", "direct_shear");
    }
}
