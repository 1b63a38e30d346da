package org.strawblue.core.heat.course;

import org.strawblue.core.heat.SteelProperties;

/**
 * A round part along a line of a plate, air in the wedge between.
 *
 * <p>Conductance to the plate per metre: k_air (2π/acosh(1 + δ/R) − what the blend to free convection takes away), in series
 * with that inside the bar. Heat enters over an angle of about θ₀ = √(2δ/R) and is taken up by the whole section: on a disc
 * the flux-weighted contact then lies (−ln(1 − e^(−2θ₀))/π + 1/8π) Q′/k above the mean, the underside
 * (−ln(1 − e^(−θ₀))/π + s/8π) Q′/k above, the top (ln(1 + e^(−θ₀))/π − s/8π) Q′/k below; s the share of Q′ that is stored.
 * A tube's wall adds the way round: πR/6w.
 *
 * <p>δ gap, R radius, w wall [m], Q′ [W/m]. Source: bipolar coordinates for the gap, Fourier series on the disc for the rest.
 */
final class LinePlate implements Surroundings {

    private static final double PLATE_EMISSIVITY = Air.FAST.number("plate-emissivity");
    private static final int PIECES = 32;

    private final Setting.OnPlate setting;
    private final Section section;
    private final Tent tent;
    private final double shape;
    private final double open;
    private final double way;
    private final double bottom;
    private final double top;
    private final double stored;
    private double under;

    LinePlate(Setting.OnPlate setting, Section section, Tent tent) {
        this.setting = setting;
        this.section = section;
        this.tent = tent;
        double ratio = setting.gap() / section.radius();
        double wedge = 2 * Math.PI / acosh(1 + ratio);
        double[] lost = blend(setting.gap(), section.radius());
        this.shape = wedge - lost[0];
        this.open = lost[1];
        double slim = section.radius() / section.wall();
        double angle = Math.sqrt(2 * ratio) * slim;
        double round = Math.PI * slim * (1 - 1 / slim);
        this.stored = 1 / (8 * Math.PI);
        this.way = -Math.log(-Math.expm1(-2 * angle)) / Math.PI + stored + round / 6;
        this.bottom = -Math.log(-Math.expm1(-angle)) / Math.PI + round / 6;
        this.top = -Math.log1p(Math.exp(-angle)) / Math.PI - round / 12;
    }

    @Override
    public void into(Flow flow, double seconds, double kelvin) {
        tent.at(seconds);
        double k = SteelProperties.conductivity(kelvin);
        double metres = section.line();
        double gap = metres * shape * Air.conductivity((tent.hot + kelvin + under) / 2);
        double line = gap / (1 + gap * way / (k * metres));
        double half = Math.PI * section.radius() * metres;
        double ends = section.volume() / metres;
        double seen = setting.emissivity();
        double below = half * Air.radiation(kelvin, tent.hot) * facing(seen);
        double above = (half + 2 * ends) * seen * Air.radiation(kelvin, tent.walls);
        double air = (open * metres + 2 * ends)
                * setting.filmFactor()
                * Air.aboutBar(2 * section.radius(), kelvin, tent.air);
        double fromLine = line * (tent.hot - kelvin);
        flow.heat = fromLine + below * (tent.hot - kelvin) + above * (tent.walls - kelvin) + air * (tent.air - kelvin);
        tent.give(fromLine + below * (tent.hot - kelvin));
        flow.slope = line + below + above + air;
        double perMetre = 1 / (k * metres);
        double held = stored * flow.heat * perMetre;
        under = bottom * fromLine * perMetre + held;
        flow.underside = under;
        flow.top = top * fromLine * perMetre + held;
        flow.core = -held;
    }

    /** Emissivity between part and plate, close to each other. */
    private static double facing(double emissivity) {
        return emissivity <= 0 ? 0 : 1 / (1 / emissivity + 1 / PLATE_EMISSIVITY - 1);
    }

    private static double acosh(double x) {
        return Math.log(x + Math.sqrt((x - 1) * (x + 1)));
    }

    /**
     * Share 1 − w of the surface that free convection has, w = 1/(1 + (gap/b)⁴): ∫ (1 − w)/gap R dθ [1], ∫ (1 − w) R dθ [m].
     */
    private static double[] blend(double gap, double radius) {
        double b = Air.blendLength();
        double[] sums = new double[2];
        for (int i = 0; i < PIECES; i++) {
            double angle = Math.PI * (i + 1.0 / 2) / PIECES;
            double here = gap + radius * (1 - Math.cos(angle));
            double over = here / b;
            double share = 1 - 1 / (1 + over * over * over * over);
            double piece = 2 * Math.PI / PIECES * radius;
            sums[0] += share / here * piece;
            sums[1] += share * piece;
        }
        return sums;
    }
}
