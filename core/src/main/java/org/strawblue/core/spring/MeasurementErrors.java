package org.strawblue.core.spring;

import org.strawblue.core.quantity.Dimension;

/**
 * How far each measured figure may be off: half-widths of its 80 % interval.
 *
 * @param wire [m]
 * @param outside of the outside diameter [m]
 * @param freeLength [m]
 * @param coils [1]
 */
public record MeasurementErrors(double wire, double outside, double freeLength, double coils) {

    private static final Constants DATA = Constants.of("measurement.csv");
    private static final MeasurementErrors USUAL = new MeasurementErrors(
            DATA.si("wire", Dimension.LENGTH),
            DATA.si("outside", Dimension.LENGTH),
            DATA.si("free_length", Dimension.LENGTH),
            DATA.si("coils", Dimension.NUMBER));
    private static final double ENDS_UNKNOWN = DATA.si("coils_ends_unknown", Dimension.NUMBER);

    /** Callipers in a fair hand, coils counted to a quarter. */
    public static MeasurementErrors usual() {
        return USUAL;
    }

    /** The same, where nobody noted how the ends are formed, so that the working coils are in doubt. */
    MeasurementErrors endsUnknown() {
        return new MeasurementErrors(wire, outside, freeLength, Math.hypot(coils, ENDS_UNKNOWN));
    }
}
