package org.strawblue.core.pyrometry;

/** A separate thermometer that hangs or stands in the oven. */
public record OvenThermometer() implements TemperatureIndicator {

    @Override
    public String words() {
        return InstrumentErrors.words("oven-thermometer");
    }

    @Override
    public IndicationError errorAt(double kelvin) {
        return InstrumentErrors.at("oven-thermometer", kelvin);
    }
}
