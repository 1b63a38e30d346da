package org.strawblue.core.spring.tolerance;

import java.util.OptionalDouble;
import org.strawblue.core.table.Table;

/**
 * Permitted deviation of the mean coil diameter by quality class, EN 15800 (formerly DIN 2095).
 *
 * <p>Mean diameter 0.63 to 63 mm, index 4 to 20. Below index 4 the column from 4 counts. Source: pages that print the
 * standard's table.
 */
public enum CoilDiameterClass {
    ONE,
    TWO,
    THREE;

    /** Plus or minus [m]; absent outside the table. */
    public OptionalDouble deviation(double meanDiameter, double wire) {
        double mm = Bands.MM.fromSi(meanDiameter);
        double index = meanDiameter / wire;
        return Table.of(CoilDiameterClass.class, "coil_diameter.csv").rows().stream()
                .filter(r -> r.number("class") == ordinal() + 1)
                .filter(r -> Bands.holds(r, "over_mm", "upto_mm", mm))
                .filter(r -> index <= r.number("index_upto"))
                .mapToDouble(r -> Bands.MM.toSi(r.number("plus_minus_mm")))
                .findFirst();
    }
}
