package org.strawblue.core.heat.course;

/**
 * Where the nodes of a section lie, for drawing: {@code columns × rows}, a column's rows beside each other.
 *
 * @param kind how the two coordinates are meant
 * @param across of each column: angle from the underside [rad], distance from the middle [m], or distance from the end [m]
 * @param up of each row: radius [m] or height above the plate [m]; a single one where there is no second coordinate
 */
@SuppressWarnings("ArrayRecordComponent") // copied in and out
public record SectionGrid(Kind kind, double[] across, double[] up) {

    public enum Kind {
        /** Half a round section, angle and radius. */
        POLAR,
        /** Half a rectangle, distance from the middle and height. */
        RECTANGLE,
        /** Along a rod, distance from the end. */
        ROD
    }

    public SectionGrid {
        across = across.clone();
        up = up.clone();
    }

    @Override
    public double[] across() {
        return across.clone();
    }

    @Override
    public double[] up() {
        return up.clone();
    }
}
