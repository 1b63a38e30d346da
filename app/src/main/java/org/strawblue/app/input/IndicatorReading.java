package org.strawblue.app.input;

import java.util.Locale;
import java.util.Optional;
import org.strawblue.core.pyrometry.Crayons;
import org.strawblue.core.pyrometry.InfraredGun;
import org.strawblue.core.pyrometry.OvenDial;
import org.strawblue.core.pyrometry.OvenThermometer;
import org.strawblue.core.pyrometry.TemperatureIndicator;
import org.strawblue.core.pyrometry.Thermocouple;

/** Reads one thing that tells a temperature. */
final class IndicatorReading {

    private final Section thing;

    IndicatorReading(Section thing) {
        this.thing = thing;
    }

    Optional<TemperatureIndicator> indicator() {
        return thing.word("kind").flatMap(kind -> switch (kind) {
            case "crayons" -> Optional.of(new Crayons(thing.values("ratings")));
            case "infrared gun" ->
                Optional.of(new InfraredGun(thing.si("emissivity").orElse(usual("emissivity setting"))));
            case "oven dial" -> Optional.of(new OvenDial());
            case "oven thermometer" -> Optional.of(new OvenThermometer());
            default -> thermocouple();
        });
    }

    private static double usual(String what) {
        return Assumed.of(what);
    }

    private Optional<TemperatureIndicator> thermocouple() {
        String type = thing.text("type").orElse("K").toUpperCase(Locale.ROOT);
        int tolerance = (int) Math.rint(thing.si("class").orElse(2.0));
        try {
            return Optional.of(new Thermocouple(type, tolerance));
        } catch (IllegalArgumentException e) {
            thing.desk()
                    .problem(
                            thing.place("type"),
                            type,
                            "the letter of a thermocouple: K, J, N or T",
                            "It stands on the plug or the meter; most are K.");
            return Optional.empty();
        }
    }
}
