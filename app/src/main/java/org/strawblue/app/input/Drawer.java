package org.strawblue.app.input;

import java.util.List;
import org.strawblue.core.job.Unknown;
import org.strawblue.core.spring.MeasuredSpring;

/**
 * The springs of a drawer file.
 *
 * @param unknowns what the file says is not known of some of them
 */
public record Drawer(List<MeasuredSpring> springs, List<Unknown> unknowns) {

    public Drawer {
        springs = List.copyOf(springs);
        unknowns = List.copyOf(unknowns);
    }
}
