package org.strawblue.core.pyrometry;

/** A thermocouple with its bead in the work or in a twin of it: type letter and tolerance class 1 or 2. */
public record Thermocouple(String type, int toleranceClass) implements TemperatureIndicator {

    public Thermocouple {
        if (!InstrumentErrors.knows(key(type, toleranceClass))) {
            throw new IllegalArgumentException("no thermocouple of type " + type + ", class " + toleranceClass);
        }
    }

    private static String key(String type, int toleranceClass) {
        return "thermocouple-" + type + "-" + toleranceClass;
    }

    @Override
    public String words() {
        return InstrumentErrors.words(key(type, toleranceClass));
    }

    @Override
    public IndicationError errorAt(double kelvin) {
        return InstrumentErrors.at(key(type, toleranceClass), kelvin);
    }
}
