package org.strawblue.app.proof;

import java.util.Map;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;

/** Units: each input form read, each output unit printed. */
final class QuantityOperations {

    private QuantityOperations() {}

    static Map<String, Operation> all() {
        return Map.of(
                "convert", QuantityOperations::convert,
                "convert-without-zero-point", QuantityOperations::withoutZeroPoint);
    }

    private static Result convert(Inputs in) {
        Dimension dimension = Dimension.valueOf(in.text("dimension"));
        return Result.of(new Quantity(dimension, in.si("value", dimension)));
    }

    /** Control: takes a temperature for a temperature difference. */
    private static Result withoutZeroPoint(Inputs in) {
        return Result.of(
                new Quantity(Dimension.TEMPERATURE_DIFFERENCE, in.si("value", Dimension.TEMPERATURE_DIFFERENCE)));
    }
}
