package org.strawblue.core.heat.course;

import org.strawblue.core.heat.SteelProperties;

/**
 * A setting that meets a part alike on all sides: Q = S (T_e − T)/(1/h + d/k), h the film at the surface with radiation, d
 * the way from the mean temperature to the surface.
 */
final class AllRound implements Surroundings {

    private final Setting setting;
    private final Section section;
    private final LogReader log;
    private final double floor;
    private double lag;

    AllRound(Setting setting, Section section) {
        this.setting = setting;
        this.section = section;
        this.log = new LogReader(
                setting instanceof Setting.InLoggedOven oven
                        ? oven.log()
                        : org.strawblue.core.history.Trace.hold(1, 1));
        // two surfaces as wide as a flat's broad side, for its film above
        this.floor = section.round()
                ? 0
                : section.base() / (2 * (section.base() / section.radius() / 2 + section.radius() * 2));
    }

    @Override
    public void into(Flow flow, double seconds, double kelvin) {
        double surface = kelvin + lag;
        double k = SteelProperties.conductivity(kelvin);
        double around = around(seconds);
        double film = film(surface, around);
        double toRoom = roomFilm(surface);
        double gain = film * (around - kelvin) + toRoom * (room() - kelvin);
        double depth = section.surfaceDepth() / k;
        double flux = gain / (1 + (film + toRoom) * depth);
        flow.heat = section.surface() * flux;
        flow.slope = section.surface() * (film + toRoom) / (1 + (film + toRoom) * depth);
        lag = flux * depth;
        flow.underside = lag;
        flow.top = lag;
        flow.core = -flux * section.coreDepth() / k;
    }

    private double around(double seconds) {
        if (setting instanceof Setting.InOven oven) {
            return oven.swing() == 0
                    ? oven.mean()
                    : oven.mean() + oven.swing() * Math.sin(2 * Math.PI * (seconds / oven.period() + oven.phase()));
        }
        if (setting instanceof Setting.InFlame flame) {
            return flame.gas();
        }
        if (setting instanceof Setting.InBath bath) {
            return bath.bath();
        }
        if (setting instanceof Setting.InSand sand) {
            return sand.sand();
        }
        return setting instanceof Setting.InAir air ? air.room() : log.at(seconds);
    }

    private double film(double surface, double around) {
        if (setting instanceof Setting.InOven oven) {
            return oven.film() + oven.emissivity() * Air.radiation(surface, around);
        }
        if (setting instanceof Setting.InLoggedOven oven) {
            return oven.film() + oven.emissivity() * Air.radiation(surface, around);
        }
        if (setting instanceof Setting.InFlame flame) {
            return flame.film();
        }
        if (setting instanceof Setting.InBath bath) {
            return bath.film().at(surface) * bath.strength();
        }
        if (setting instanceof Setting.InSand sand) {
            return sand.film();
        }
        return still((Setting.InAir) setting, surface);
    }

    private double still(Setting.InAir air, double surface) {
        double convection = section.round()
                ? Air.aboutBar(2 * section.radius(), surface, air.room())
                : Air.aboveFlat(floor, surface, air.room());
        return air.filmFactor() * convection + air.emissivity() * Air.radiation(surface, air.room());
    }

    private double roomFilm(double surface) {
        return setting instanceof Setting.InFlame flame ? flame.emissivity() * Air.radiation(surface, flame.room()) : 0;
    }

    private double room() {
        return setting instanceof Setting.InFlame flame ? flame.room() : 0;
    }
}
