package org.strawblue.core.watch;

import org.strawblue.core.heat.course.Setting;

/** How far ahead one looks for the moment to take a part off, where nobody says. */
public final class Looked {

    private Looked() {}

    /** The longest time looked at in a setting [s]. */
    public static double longest(Setting setting) {
        if (setting instanceof Setting.Partly partly) {
            return longest(partly.there());
        }
        boolean quick = setting instanceof Setting.InFlame
                || setting instanceof Setting.InBath
                || setting instanceof Setting.InAir;
        return quick ? WatchFigures.longestQuick() : WatchFigures.longestSlow();
    }

    /** Time in air after it is taken off that is reckoned [s]. */
    public static double cooling() {
        return WatchFigures.cooling();
    }
}
