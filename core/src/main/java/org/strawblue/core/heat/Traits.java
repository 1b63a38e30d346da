package org.strawblue.core.heat;

import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/**
 * What a heat source can do and how far it may be trusted.
 *
 * @param key how the program calls it
 * @param name what the person reads
 * @param reach hottest a small part gets in it [K]
 * @param offset standard deviation of true less shown temperature [K]
 * @param swing how far the temperature swings to either side of its mean [K]
 * @param period time of one swing [s]
 * @param unevenness hottest less coldest place of a part [K]
 * @param film convective heat-transfer coefficient [W/(m²·K)]
 * @param hazard key of the cautions that belong to it
 */
public record Traits(
        String key,
        String name,
        Estimate reach,
        double offset,
        double swing,
        double period,
        double unevenness,
        Estimate film,
        String hazard,
        Basis basis) {

    /** As stated for this very source: the hottest it gets [K]. */
    public Traits withReach(double kelvin, Basis stated) {
        Estimate known = Estimate.of(Dimension.TEMPERATURE, kelvin, kelvin, kelvin, stated);
        return new Traits(key, name, known, offset, swing, period, unevenness, film, hazard, basis);
    }

    /** As measured on this very source: standard deviation of true less shown [K], and swing to either side [K]. */
    public Traits withError(double offsetKelvin, double swingKelvin, Basis measured) {
        return new Traits(key, name, reach, offsetKelvin, swingKelvin, period, unevenness, film, hazard, measured);
    }
}
