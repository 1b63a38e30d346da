package org.strawblue.core.heat;

import java.util.List;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;

/**
 * What a source's error does to the part.
 *
 * <p>A swing A of period P reaches the part as A/√(1 + (2πτ/P)²), τ = ρ c (V/S)/h its time constant, h by film and radiation.
 * Offset, what is left of the swing and half the unevenness add as independent errors.
 */
public final class OvenError {

    private OvenError() {}

    /** Temperature [K] of a part held in a source that shows {@code set} [K]. */
    public static Estimate partTemperature(HeatSource source, PartShape shape, double set) {
        Traits traits = source.traits();
        double half = Math.hypot(
                Math.hypot(Normal.HALF_OF_80 * traits.offset(), rippleAtPart(source, shape, set)),
                traits.unevenness() / 2);
        return Estimate.of(Dimension.TEMPERATURE, set, set - half, set + half, List.of(traits.basis()));
    }

    /** How far the part itself swings [K]. */
    public static double rippleAtPart(HeatSource source, PartShape shape, double set) {
        Traits traits = source.traits();
        double turns = 2 * Math.PI * timeConstant(source, shape, set) / traits.period();
        return traits.swing() / Math.hypot(1, turns);
    }

    /** τ [s] of a bright part near {@code kelvin}. */
    public static double timeConstant(HeatSource source, PartShape shape, double kelvin) {
        double emissivity = HeatThrough.Surface.BRIGHT.emissivity().value();
        Exposure exposure =
                HeatThrough.exposure(source, kelvin, source.traits().film().value(), emissivity);
        double transfer = exposure.flux(kelvin - 1.0 / 2) - exposure.flux(kelvin + 1.0 / 2);
        return SteelProperties.DENSITY * SteelProperties.specificHeat(kelvin) * shape.volumeOverSurface() / transfer;
    }
}
