package org.strawblue.core.pyrometry;

import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.strawblue.core.colour.Planck;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.estimate.Validity;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;

/**
 * What an infrared gun reads on a surface, and the surface's temperature from what it reads.
 *
 * <p>set·S(T_m) + (1 − set)·S(T_d) = ε S(T) + (1 − ε) S(T_r); S(T) = 1/(exp(c₂/(A T + B)) − 1). T_m reading, T_d the gun's
 * own temperature, T surface, T_r what the surface reflects [K], here both T_d and T_r are the surroundings; ε, set
 * emissivity and setting [1]. 0 to 800 °C. S after Sakuma and Hattori.
 */
public record InfraredReading(InfraredGun gun, Surface surface, double surroundings) {

    private static final Constants N = Constants.of(InfraredReading.class, "infrared.csv");
    private static final double A = N.inUnit("a", "m");
    private static final double B = N.inUnit("b", "m K");
    private static final double C2 = Planck.secondConstant();
    private static final Validity RANGE = new Validity(
            "The infrared law",
            "a temperature",
            new Band(
                    Dimension.TEMPERATURE,
                    N.si("lowest", Dimension.TEMPERATURE),
                    N.si("highest", Dimension.TEMPERATURE)));

    /** What the gun will read [K] where the surface is at {@code kelvin}; interval from emissivity and gun. */
    public Answer<Estimate> at(double kelvin) {
        Optional<Finding> outside = RANGE.check(kelvin);
        if (outside.isPresent()) {
            return Answer.refused(outside.get());
        }
        return combined(
                reading(kelvin, emissivity().value()),
                reading(kelvin, emissivity().low()),
                reading(kelvin, emissivity().high()));
    }

    /** The surface's temperature [K] where the gun reads {@code kelvin}. */
    public Answer<Estimate> truth(double kelvin) {
        if (kelvin <= surroundings) {
            return Answer.refused(reflectionOnly(kelvin));
        }
        Optional<Finding> outside = RANGE.check(kelvin);
        if (outside.isPresent()) {
            return Answer.refused(outside.get());
        }
        return combined(
                truth(kelvin, emissivity().value()),
                truth(kelvin, emissivity().high()),
                truth(kelvin, emissivity().low()));
    }

    private Answer<Estimate> combined(double value, double low, double high) {
        double own = Normal.HALF_OF_80 * gun.errorAt(value).sd();
        SortedSet<Basis> bases = new TreeSet<>(emissivity().bases());
        bases.add(gun.errorAt(value).basis());
        bases.add(N.basis("infrared signal, 8 to 14 µm", "a"));
        return Answer.of(Estimate.of(
                Dimension.TEMPERATURE,
                value,
                value - Math.hypot(value - low, own),
                value + Math.hypot(high - value, own),
                bases));
    }

    private Estimate emissivity() {
        return surface.emissivity();
    }

    private double reading(double kelvin, double emissivity) {
        return reads(gun.emissivitySetting(), kelvin, emissivity, surroundings, surroundings);
    }

    /**
     * The reading T_m [K] of the formula above.
     *
     * @param set the gun's setting [1]
     * @param kelvin of the surface
     * @param emissivity of the surface [1]
     * @param reflected what the surface mirrors [K]
     * @param own the gun's own temperature [K]
     */
    public static double reads(double set, double kelvin, double emissivity, double reflected, double own) {
        double seen = emissivity * signal(kelvin) + (1 - emissivity) * signal(reflected) - (1 - set) * signal(own);
        return temperature(Math.max(seen / set, signal(1)));
    }

    private double truth(double reading, double emissivity) {
        double set = gun.emissivitySetting();
        return temperature((set * signal(reading) + (emissivity - set) * signal(surroundings)) / emissivity);
    }

    private static double signal(double kelvin) {
        return 1 / Math.expm1(C2 / (A * kelvin + B));
    }

    private static double temperature(double signal) {
        return (C2 / Math.log1p(1 / signal) - B) / A;
    }

    private Finding reflectionOnly(double kelvin) {
        return new Finding.Stop(
                Phrase.of(
                        "the gun reads {}, no more than the surroundings at {}",
                        Quantity.temperature(kelvin),
                        Quantity.temperature(surroundings)),
                Phrase.of("So near to the surroundings it tells what the steel reflects, not how hot it is."),
                Phrase.of("Paint or soot a patch larger than the spot, and read that."));
    }
}
