package org.strawblue.app.report.picture;

import org.strawblue.core.job.Picture.SpringInPocket;

/**
 * Where the wire of a compression spring lies along its axis at one length [m].
 *
 * <p>Closed ends: the first and the last coil lie wire on wire, the coils between share the rest evenly. Ground ends:
 * half the wire is gone at each face.
 */
record Coil(double wire, double coils, boolean closed, boolean ground, double length) {

    static Coil of(SpringInPocket spring, double length) {
        return new Coil(spring.wire(), spring.totalCoils(), spring.closedEnds(), spring.groundEnds(), length);
    }

    /** Distance of the wire's middle from the seat after {@code turn} turns [m]. */
    double at(double turn) {
        double start = ground ? 0 : wire / 2;
        double travel = length - 2 * start;
        if (!closed || coils <= 2) {
            return start + travel * turn / coils;
        }
        double dead = wire;
        if (turn <= 1) {
            return start + dead * turn;
        }
        if (turn >= coils - 1) {
            return length - start - dead * (coils - turn);
        }
        return start + dead + (travel - 2 * dead) * (turn - 1) / (coils - 2);
    }
}
