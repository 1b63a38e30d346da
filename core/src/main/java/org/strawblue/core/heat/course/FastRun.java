package org.strawblue.core.heat.course;

import java.util.Map;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.ThermalHistory;
import org.strawblue.core.history.Trace;

/**
 * What the fast model says of one course, at the times asked.
 *
 * @param seconds times [s], rising
 * @param underside [K]
 * @param top [K]
 * @param core [K]
 */
@SuppressWarnings("ArrayRecordComponent") // made for one reader, thousands of times
public record FastRun(double[] seconds, double[] underside, double[] top, double[] core) {

    /** [K] at the times asked. The edge and the surface are taken as the top. */
    public double[] at(Place place) {
        return switch (place) {
            case UNDERSIDE -> underside;
            case CORE -> core;
            case TOP, EDGE, SURFACE -> top;
        };
    }

    public ThermalHistory history() {
        return new ThermalHistory(Map.of(
                Place.UNDERSIDE, new Trace(seconds, underside),
                Place.TOP, new Trace(seconds, top),
                Place.SURFACE, new Trace(seconds, top),
                Place.CORE, new Trace(seconds, core)));
    }
}
