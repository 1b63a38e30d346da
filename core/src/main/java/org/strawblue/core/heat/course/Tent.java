package org.strawblue.core.heat.course;

import org.strawblue.core.quantity.Dimension;

/**
 * Air and walls over a plate. In the open: air at room + φ (plate − room), walls at the room. Under a cover both come to
 * room + χ (plate − room) as a first-order lag.
 */
final class Tent {

    private static final double SHARE = Air.FAST.number("cavity-share");
    private static final double TIME = Air.FAST.si("cavity-time", Dimension.TIME);

    private final Setting.OnPlate setting;
    private final LogReader plate;
    double hot;
    double air;
    double walls;

    Tent(Setting.OnPlate setting) {
        this.setting = setting;
        this.plate = new LogReader(setting.plate());
    }

    /** Sets plate, air and walls [K] for a time [s] in the setting. */
    void at(double seconds) {
        hot = plate.at(seconds);
        double rise = hot - setting.room();
        if (setting.covered()) {
            air = setting.room() + SHARE * (1 - Math.exp(-seconds / TIME)) * rise;
            walls = air;
        } else {
            air = setting.room() + setting.roomShare() * rise;
            walls = setting.room();
        }
    }
}
