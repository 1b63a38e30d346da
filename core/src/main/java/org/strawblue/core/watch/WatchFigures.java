package org.strawblue.core.watch;

import org.strawblue.core.estimate.Constants;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;

/** The numbers of {@code watch.csv}. */
final class WatchFigures {

    private static final Constants ALL = Constants.of(WatchFigures.class, "watch.csv");

    private WatchFigures() {}

    /** How late a part is taken off when the moment is missed [s]. */
    static double late() {
        return ALL.si("late", Dimension.TIME);
    }

    /** How much harder quick tests came out than the law says [HRC]. */
    static Estimate quickTestHarder() {
        return ALL.estimate("quick-test-harder", Dimension.HARDNESS);
    }

    /** Length of those tests [s]. */
    static double quickTest() {
        return ALL.si("quick-test", Dimension.TIME);
    }

    /** How far ahead one looks where a plate, oven or tray heats [s]. */
    static double longestSlow() {
        return ALL.si("longest-slow", Dimension.TIME);
    }

    /** The same where a flame heats or colours run [s]. */
    static double longestQuick() {
        return ALL.si("longest-quick", Dimension.TIME);
    }

    /** Time in air afterwards [s]. */
    static double cooling() {
        return ALL.si("cooling", Dimension.TIME);
    }
}
