package org.strawblue.core.spring;

import java.util.Comparator;
import java.util.List;

/** Which springs of a drawer work in a pocket, as they are or cut down. */
public final class SpringSearch {

    private SpringSearch() {}

    /**
     * Every spring, the likeliest to work first. Among springs that differ by less than one chance in a
     * hundred the one that needs no cutting comes first.
     */
    public static List<SpringVerdict> rank(Pocket pocket, List<MeasuredSpring> drawer) {
        return drawer.stream()
                .map(spring -> new SpringTrial(pocket, spring).judge())
                .sorted(Comparator.comparing(SpringVerdict::works)
                        .thenComparingLong(v -> Math.round(100 * v.probability()))
                        .thenComparing(v -> v.spring().cut().isEmpty())
                        .thenComparingDouble(SpringVerdict::probability)
                        .reversed())
                .toList();
    }
}
