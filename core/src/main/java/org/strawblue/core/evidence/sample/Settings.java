package org.strawblue.core.evidence.sample;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.heat.HeatThrough;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.heat.Traits;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenchants;

/** The setting a heat source makes: what is stated of it, and the middle of what is believed of the rest. */
public final class Settings {

    private Settings() {}

    /**
     * What a person states of a heat.
     *
     * @param kelvin what it is set to; absent where it is not told
     * @param gap under the part [m]; absent where it is not known
     * @param emissivity of the part [1]
     * @param covered whether part and plate are covered
     */
    public record Stated(OptionalDouble kelvin, OptionalDouble gap, double emissivity, boolean covered) {}

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

    /** The setting a person's word names: a heat source, a quench, or air. */
    public static Answer<Setting> named(String word, Stated stated) {
        String name = word.strip();
        if (AIR.stream().anyMatch(name::equalsIgnoreCase)) {
            return Answer.of(air(stated.emissivity()));
        }
        Answer<HeatSource> source = HeatSources.find(name);
        Optional<Quenchant> quench = Quenchants.find(name).value();
        if (source.value().isEmpty() && quench.isPresent()) {
            Quenchant bath = quench.get();
            return Answer.of(of(bath, stated.kelvin().orElse(bath.bath().value())));
        }
        return source.then(s -> of(s, stated));
    }

    private static Answer<Setting> of(HeatSource source, Stated stated) {
        if (source.gas().isEmpty() && stated.kelvin().isEmpty()) {
            return Answer.refused(new Finding.Stop(
                    Phrase.of("It is not told what the " + source.name() + " is at."),
                    Phrase.of("Without it nothing can be said of what lies in or on it."),
                    Phrase.of("Give its temperature; a guess is better than nothing, and what was seen corrects it.")));
        }
        return Answer.of(told(source, stated.kelvin().orElse(room()), stated));
    }

    private static final List<String> AIR = List.of("air", "still air");

    private static Setting told(HeatSource source, double kelvin, Stated stated) {
        double emissivity = stated.emissivity();
        Traits traits = source.traits();
        double film = traits.film().value();
        if (source instanceof HeatSource.HotPlate) {
            Setting.OnPlate plate = Setting.OnPlate.steady(
                    kelvin,
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
            return new Setting.InSand(kelvin, film);
        }
        return new Setting.InOven(kelvin, traits.swing(), Math.max(traits.period(), 1), 0, film, emissivity);
    }

    private static Setting of(Quenchant quench, double kelvin) {
        return new Setting.InBath(quench.film(), quench.strength().value(), kelvin);
    }

    public static Setting air(double emissivity) {
        return new Setting.InAir(room(), emissivity, 1);
    }
}
