package org.strawblue.core.job.plan;

import java.util.Optional;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.job.Shop;
import org.strawblue.core.pyrometry.InfraredGun;
import org.strawblue.core.pyrometry.TemperatureIndicator;
import org.strawblue.core.source.Basis;

/**
 * How far the metal may be from the temperature aimed for: the error of whichever knows best, the source's own setting or
 * an instrument of the shop, and the unevenness of the heat.
 *
 * @param sd one standard deviation [K]
 * @param byInstrument the instrument that is trusted; absent where the source's own setting is all there is
 */
record TemperatureError(double sd, Optional<TemperatureIndicator> byInstrument, Basis basis) {

    /** Half of the 80 % interval [K]. */
    double half() {
        return Normal.HALF_OF_80 * sd;
    }

    static TemperatureError of(HeatSource source, double kelvin, Shop shop) {
        // an even spread over a width has this standard deviation
        double uneven = source.traits().unevenness() / Math.sqrt(12);
        // an infrared gun's error is that of a black patch; nothing here knows how black this part is
        Optional<TemperatureIndicator> best = shop.indicators().stream()
                .filter(i -> !(i instanceof InfraredGun))
                .min((a, b) ->
                        Double.compare(a.errorAt(kelvin).sd(), b.errorAt(kelvin).sd()))
                .filter(i -> i.errorAt(kelvin).sd() < source.traits().offset());
        if (best.isPresent()) {
            return new TemperatureError(
                    Math.hypot(best.get().errorAt(kelvin).sd(), uneven),
                    best,
                    best.get().errorAt(kelvin).basis());
        }
        return new TemperatureError(
                Math.hypot(source.traits().offset(), uneven),
                best,
                source.traits().basis());
    }
}
