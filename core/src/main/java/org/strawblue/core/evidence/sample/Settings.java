package org.strawblue.core.evidence.sample;

import java.util.OptionalDouble;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.heat.HeatThrough;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.heat.Traits;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.history.Trace;
import org.strawblue.core.steel.Quenchant;

/** The setting a heat source makes: what is stated of it, and the middle of what is believed of the rest. */
public final class Settings {

    private Settings() {}

    /**
     * What a person states of a heat.
     *
     * @param kelvin what it is set to
     * @param gap under the part [m]
     * @param emissivity of the part [1]
     * @param covered whether part and plate are covered
     */
    public record Stated(double kelvin, OptionalDouble gap, OptionalDouble emissivity, boolean covered) {

        public static Stated at(double kelvin) {
            return new Stated(kelvin, OptionalDouble.empty(), OptionalDouble.empty(), false);
        }
    }

    /** Temperature of the workshop [K]. */
    public static double room() {
        return SteelProperties.room();
    }

    /** Emissivity of a part, bright or oxidised [1]. */
    public static double emissivity(HeatThrough.Surface surface) {
        return surface == HeatThrough.Surface.BRIGHT
                ? usual(Influence.PART_EMISSIVITY)
                : surface.emissivity().value();
    }

    private static double usual(Influence influence) {
        return Priors.usual().of(influence).centre();
    }

    public static Setting of(HeatSource source, Stated stated) {
        double emissivity = stated.emissivity().orElse(usual(Influence.PART_EMISSIVITY));
        Traits traits = source.traits();
        double film = traits.film().value();
        if (source instanceof HeatSource.HotPlate) {
            Setting.OnPlate plate = Setting.OnPlate.steady(
                    stated.kelvin(),
                    stated.gap().orElse(usual(Influence.CONTACT_GAP)),
                    emissivity,
                    usual(Influence.ROOM_SHARE),
                    room());
            return stated.covered() ? plate.withCover() : plate;
        }
        if (source instanceof HeatSource.Torch torch) {
            return new Setting.InFlame(torch.gasKelvin(), film, emissivity, room());
        }
        if (source instanceof HeatSource.SandTray) {
            return new Setting.InSand(stated.kelvin(), film);
        }
        return new Setting.InOven(stated.kelvin(), traits.swing(), Math.max(traits.period(), 1), 0, film, emissivity);
    }

    public static Setting of(Quenchant quench, double kelvin) {
        return new Setting.InBath(quench.film(), quench.strength().value(), kelvin);
    }

    public static Setting air(double emissivity) {
        return new Setting.InAir(room(), emissivity, 1);
    }

    /** An oven whose temperature was logged. */
    public static Setting logged(HeatSource oven, Trace log, double emissivity) {
        return new Setting.InLoggedOven(log, oven.traits().film().value(), emissivity);
    }
}
