package org.strawblue.core.spring;

import org.strawblue.core.source.Basis;

/**
 * How much the inside of the coil is stressed above straight torsion: τ = K · 8 F D / (π d³).
 *
 * <p>F force [N], D mean coil diameter [m], d wire [m]. Rival laws stand side by side: {@link Wahl}, {@link
 * Bergstraesser}, {@link Goehner}, and {@link DirectShear}, which leaves the curvature out.
 */
public interface StressFactor {

    /** K [1] at the spring index C = D/d [1], which must be greater than 1. */
    double at(double index);

    Basis basis();

    /** Corrected shear stress [Pa]. */
    default double stress(double force, double meanDiameter, double wire) {
        return at(meanDiameter / wire) * ShearStress.uncorrected(force, meanDiameter, wire);
    }
}
