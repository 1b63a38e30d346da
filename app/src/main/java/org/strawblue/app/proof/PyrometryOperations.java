package org.strawblue.app.proof;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.strawblue.core.glow.GlowGuide;
import org.strawblue.core.pyrometry.Crayons;
import org.strawblue.core.pyrometry.InfraredGun;
import org.strawblue.core.pyrometry.InfraredReading;
import org.strawblue.core.pyrometry.Surface;
import org.strawblue.core.pyrometry.TemperatureIndicator;
import org.strawblue.core.pyrometry.Thermocouple;
import org.strawblue.core.quantity.Quantity;

/** What indicators tell, and the glow of hot steel. */
final class PyrometryOperations {

    private PyrometryOperations() {}

    static Map<String, Operation> all() {
        return Map.of(
                "infrared-reading", in -> Result.of(gun(in).at(in.temperature("temperature"))),
                "infrared-truth", in -> Result.of(gun(in).truth(in.temperature("reading"))),
                "infrared-trusted", in -> Result.of(Quantity.temperature(in.temperature("temperature"))),
                "indicator-tolerance", PyrometryOperations::tolerance,
                "glow-colour", PyrometryOperations::glow);
    }

    private static InfraredReading gun(Inputs in) {
        return new InfraredReading(
                new InfraredGun(in.number("set")),
                Surface.valueOf(in.text("surface").toUpperCase(Locale.ROOT)),
                in.temperature("shop"));
    }

    private static Result tolerance(Inputs in) {
        TemperatureIndicator indicator = in.text("indicator").equals("crayons")
                ? new Crayons(List.of())
                : new Thermocouple(in.text("indicator"), (int) in.number("class"));
        return Result.of(Quantity.temperatureDifference(
                indicator.errorAt(in.temperature("temperature")).tolerance()));
    }

    private static Result glow(Inputs in) {
        return GlowGuide.named(in.text("colour"))
                .map(c -> Result.of(c.temperature()))
                .orElseThrow(() -> new IllegalArgumentException("no such heat colour"));
    }
}
