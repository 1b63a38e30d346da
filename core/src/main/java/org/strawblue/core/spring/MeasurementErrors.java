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

    private static final MeasurementErrors USUAL = new MeasurementErrors(
            Figures.MEASUREMENT.si("wire", Dimension.LENGTH),
            Figures.MEASUREMENT.si("outside", Dimension.LENGTH),
            Figures.MEASUREMENT.si("free_length", Dimension.LENGTH),
            Figures.MEASUREMENT.si("coils", Dimension.NUMBER));
    private static final double ENDS_UNKNOWN = Figures.MEASUREMENT.si("coils_ends_unknown", Dimension.NUMBER);

    /** Callipers in a fair hand, coils counted to a quarter. */
    public static MeasurementErrors usual() {
        return USUAL;
    }

    /** The same, where nobody noted how the ends are formed, so that the working coils are in doubt. */
    MeasurementErrors endsUnknown() {
        return new MeasurementErrors(wire, outside, freeLength, Math.hypot(coils, ENDS_UNKNOWN));
    }
}
