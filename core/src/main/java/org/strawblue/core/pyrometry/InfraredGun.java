package org.strawblue.core.pyrometry;

/** An infrared thermometer for 8 to 14 µm, set to an emissivity. Its error here is its own, on a black patch; the surface adds to it. */
public record InfraredGun(double emissivitySetting) implements TemperatureIndicator {

    public InfraredGun {
        if (!(emissivitySetting > 0 && emissivitySetting <= 1)) {
            throw new IllegalArgumentException("an emissivity lies between 0 and 1, not " + emissivitySetting);
        }
    }

    @Override
    public String words() {
        return InstrumentErrors.words("infrared-gun");
    }

    @Override
    public IndicationError errorAt(double kelvin) {
        return InstrumentErrors.at("infrared-gun", kelvin);
    }
}
