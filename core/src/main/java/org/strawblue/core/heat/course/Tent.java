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

    private final double capacity;
    private final double recovery;
    private double last;
    private double given;
    private double sag;

    /** @param capacity of a plate that the part cools [J/K], 0 where it does not; {@code recovery} [W/K] */
    Tent(Setting.OnPlate setting, double capacity, double recovery) {
        this.setting = setting;
        this.capacity = capacity;
        this.recovery = recovery;
        this.plate = new LogReader(setting.plate());
    }

    /** Sets plate, air and walls [K] for a time [s] in the setting. */
    void at(double seconds) {
        sink(seconds);
        hot = plate.at(seconds) - sag;
        double rise = hot - setting.room();
        if (setting.covered()) {
            air = setting.room() + SHARE * (1 - Math.exp(-seconds / TIME)) * rise;
            walls = air;
        } else {
            air = setting.room() + setting.roomShare() * rise;
            walls = setting.room();
        }
    }

    /** Notes what the part takes from the plate [W] from here on. */
    void give(double watts) {
        given = watts;
    }

    /** C ds/dt = Q − r s, s the sag. */
    private void sink(double seconds) {
        if (capacity > 0 && seconds > last) {
            double rest = given / recovery;
            sag = rest + (sag - rest) * Math.exp(-(seconds - last) * recovery / capacity);
            last = seconds;
        }
    }
}
