package org.strawblue.core.heat.course;

import java.util.List;
import org.strawblue.core.part.PartShape;

/**
 * What a part goes through, from a temperature all of it has at first.
 *
 * @param start [K]
 * @param spells one after another
 */
public record Course(PartShape shape, double start, List<Spell> spells) {

    public Course {
        spells = List.copyOf(spells);
        if (spells.isEmpty() || !(start > 0)) {
            throw new IllegalArgumentException("a course needs a spell and a starting temperature");
        }
    }

    /** [s] */
    public double duration() {
        return spells.stream().mapToDouble(Spell::seconds).sum();
    }
}
