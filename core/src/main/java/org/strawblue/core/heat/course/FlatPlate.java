package org.strawblue.core.heat.course;

import org.strawblue.core.heat.SteelProperties;

/**
 * A flat-sided part on its side: base h_b = k_air/δ + radiation, in series with t/3k; the top loses to air and walls, the sides to
 * air and see plate and walls half each.
 *
 * <p>Quasi-steady in the thickness: underside less mean = (q_b t/3 + q_t t/6)/k − …, exact for a slab that warms evenly:
 * T_u = T + (2 q_b − q_t) t/6k, T_o = T + (2 q_t − q_b) t/6k, q_b and q_t into the base and the top [W/m²].
 */
final class FlatPlate implements Surroundings {

    private static final double PLATE_EMISSIVITY = Air.FAST.number("plate-emissivity");

    private final Setting.OnPlate setting;
    private final Section section;
    private final Tent tent;
    private final double sides;
    private final double reach;
    private double under;
    private double over;

    FlatPlate(Setting.OnPlate setting, Section section, Tent tent) {
        this.setting = setting;
        this.section = section;
        this.tent = tent;
        this.sides = section.surface() - 2 * section.base();
        double perimeter = sides / section.height();
        this.reach = section.base() / perimeter;
    }

    @Override
    public void into(Flow flow, double seconds, double kelvin) {
        tent.at(seconds);
        double depth = section.height() / (6 * SteelProperties.conductivity(kelvin));
        double bottom = kelvin + under;
        double top = kelvin + over;
        double film = Air.conductivity((tent.hot + bottom) / 2) / setting.gap()
                + facing(setting.emissivity()) * Air.radiation(bottom, tent.hot);
        double baseFilm = film / (1 + 2 * depth * film);
        double base = baseFilm * (tent.hot - kelvin);
        double convection = setting.filmFactor() * Air.aboveFlat(reach, top, tent.air);
        double radiation = setting.emissivity() * Air.radiation(top, tent.walls);
        double loss = convection * (tent.air - top) + radiation * (tent.walls - top);
        double free = setting.filmFactor() * Air.aboutBar(section.height(), kelvin, tent.air);
        double seen = setting.emissivity() * Air.radiation(kelvin, tent.walls) / 2;
        double below = facing(setting.emissivity()) * Air.radiation(kelvin, tent.hot) / 2;
        double fromPlate = section.base() * base + sides * below * (tent.hot - kelvin);
        flow.heat =
                fromPlate + section.base() * loss + sides * (free * (tent.air - kelvin) + seen * (tent.walls - kelvin));
        tent.give(fromPlate);
        flow.slope = section.base() * (baseFilm + convection + radiation) + sides * (free + seen + below);
        under = (2 * base - loss) * depth;
        over = (2 * loss - base) * depth;
        flow.underside = under;
        flow.top = over;
        flow.core = -(base + loss) * depth / 2;
    }

    private static double facing(double emissivity) {
        return emissivity <= 0 ? 0 : 1 / (1 / emissivity + 1 / PLATE_EMISSIVITY - 1);
    }
}
