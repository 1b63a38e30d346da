package org.strawblue.core.pyrometry;

import java.util.List;

/** Melting crayons: the ratings in the drawer [K], rising. An empty list means that any of the trade ladder may be bought. */
public record Crayons(List<Double> ratings) implements TemperatureIndicator {

    public Crayons {
        ratings = ratings.stream().sorted().toList();
    }

    @Override
    public String words() {
        return InstrumentErrors.words("crayons");
    }

    @Override
    public IndicationError errorAt(double kelvin) {
        return InstrumentErrors.at("crayons", kelvin);
    }
}
