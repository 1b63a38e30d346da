package org.strawblue.core.pyrometry;

import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Dimension;

/** Something in the shop that tells a temperature. */
public sealed interface TemperatureIndicator permits Crayons, InfraredGun, OvenDial, OvenThermometer, Thermocouple {

    /** What it is, in a few words. */
    String words();

    /** Its error where it indicates {@code kelvin} [K], set up and used with care. */
    IndicationError errorAt(double kelvin);

    /** The temperature [K] of the thing it touches or sees, where it indicates {@code kelvin}. */
    default Estimate truth(double kelvin) {
        IndicationError error = errorAt(kelvin);
        double half = Normal.HALF_OF_80 * error.sd();
        return Estimate.of(Dimension.TEMPERATURE, kelvin, kelvin - half, kelvin + half, error.basis());
    }
}
