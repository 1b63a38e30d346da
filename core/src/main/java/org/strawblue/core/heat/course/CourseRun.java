package org.strawblue.core.heat.course;

import java.util.List;
import java.util.OptionalDouble;
import org.strawblue.core.history.ThermalHistory;

/**
 * What came of a course.
 *
 * @param history temperature against time at the named places
 * @param frames the whole section at some moments, evenly over the course
 * @param energy heat through the surface against heat found in the part
 * @param arrival time until the slowest place came within 10 K of its last surroundings [s]; absent where it did not
 * @param steps steps the integrator took
 */
public record CourseRun(
        ThermalHistory history,
        SectionGrid grid,
        List<Frame> frames,
        EnergyBalance energy,
        OptionalDouble arrival,
        int steps) {

    public CourseRun {
        frames = List.copyOf(frames);
    }
}
