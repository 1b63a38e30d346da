package org.strawblue.core.spring;

import org.strawblue.core.source.Basis;

/**
 * K = (4C − 1)/(4C − 4) + 0.615/C.
 *
 * <p>C spring index [1], for 3 to 20. Finite elements find it 0.4 % (index 10) to 1.4 % (index 4) too high. Source:
 * engineering textbooks, after Wahl.
 */
public record Wahl() implements StressFactor {

    private static final double CURVATURE = Figures.FORMULAS.number("wahl_curvature");
    private static final double SHEAR = Figures.FORMULAS.number("wahl_shear");

    @Override
    public double at(double index) {
        return (CURVATURE * index - 1) / (CURVATURE * index - CURVATURE) + SHEAR / index;
    }

    @Override
    public Basis basis() {
        return Figures.FORMULAS.basis("stress factor after Wahl", "wahl_shear");
    }
}
