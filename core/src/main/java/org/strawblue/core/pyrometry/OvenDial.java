package org.strawblue.core.pyrometry;

/** The oven's own dial or display. */
public record OvenDial() implements TemperatureIndicator {

    @Override
    public String words() {
        return InstrumentErrors.words("oven-dial");
    }

    @Override
    public IndicationError errorAt(double kelvin) {
        return InstrumentErrors.at("oven-dial", kelvin);
    }
}
