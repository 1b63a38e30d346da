package org.strawblue.core.spring.tolerance;

import java.util.List;
import java.util.OptionalDouble;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.MeasurementErrors;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * What a spring made to the standards, and not measured, may differ by: its limits as if every size between them were as
 * likely as any other, so that the 80 % interval is 0.8 of them.
 */
public final class MadeToStandard {

    private static final double COILS = Bands.PRACTICE.number("coils");
    private static final double SHARE = Bands.PRACTICE.number("share_of_limits");

    private static final List<Row> WIRES =
            Table.of(MadeToStandard.class, "wire.csv").rows();

    private MadeToStandard() {}

    /** Half-widths of the 80 % intervals; where the class knows no such coil, its diameter to the usual calliper error. */
    public static MeasurementErrors errors(Coil drawn, CoilDiameterClass quality) {
        OptionalDouble diameter = quality.deviation(drawn.mean(), drawn.wire());
        return new MeasurementErrors(
                SHARE * wire(drawn.wire()),
                diameter.isPresent()
                        ? SHARE * diameter.getAsDouble()
                        : MeasurementErrors.usual().outside(),
                SHARE * FreeLengthTolerance.of(drawn),
                SHARE * COILS);
    }

    /** Plus or minus, EN 10270-1 [m]; beyond the printed sizes the last row's. */
    public static double wire(double diameter) {
        double mm = Bands.MM.fromSi(diameter);
        double found = 0;
        for (Row row : WIRES) {
            found = Bands.MM.toSi(row.number("plus_minus_mm"));
            if (Bands.holds(row, "over_mm", "upto_mm", mm)) {
                return found;
            }
        }
        return found;
    }

    /** What the trade promises of stock springs: rate, and force at a length [1]. */
    public static double stockRate() {
        return Bands.PRACTICE.number("stock_rate");
    }
}
