package org.strawblue.core.job;

import java.util.List;
import java.util.OptionalDouble;
import org.strawblue.core.assembly.Lock;
import org.strawblue.core.fit.Demand;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.part.Feature;

/**
 * How the parts of a job go together.
 *
 * @param gaps chains of sizes with what each has to come to
 */
public record AssemblyWish(List<Slide> slides, List<Demand> gaps, List<LockedScrew> locks, List<Finish> finishes) {

    public static final AssemblyWish NONE = new AssemblyWish(List.of(), List.of(), List.of(), List.of());

    public AssemblyWish {
        slides = List.copyOf(slides);
        gaps = List.copyOf(gaps);
        locks = List.copyOf(locks);
        finishes = List.copyOf(finishes);
    }

    public boolean isEmpty() {
        return slides.isEmpty() && gaps.isEmpty() && locks.isEmpty() && finishes.isEmpty();
    }

    /** A hole and what runs in it, both with limits. */
    public record Slide(String name, Feature hole, Feature shaft) {}

    /** A screw that is locked when all works. */
    public record LockedScrew(String name, Lock lock) {}

    /**
     * A temper colour as a finish.
     *
     * @param part whose
     * @param kelvin temperature to hold it at [K]
     */
    public record Finish(String part, ColourName colour, OptionalDouble kelvin) {}
}
