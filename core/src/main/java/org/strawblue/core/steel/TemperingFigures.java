package org.strawblue.core.steel;

import org.strawblue.core.estimate.Constants;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/** The figures all tempering laws share: exchange of time for temperature, and how far a law may be asked. */
final class TemperingFigures {

    private static final Constants LAW = Constants.of(TemperingFigures.class, "tempering-law.csv");

    private static final double A = LAW.number("exchange_a");
    private static final double B = LAW.inUnit("exchange_b", "1/%");
    private static final double CAP = LAW.inUnit("exchange_cap", "mass %");
    private static final double CENTRE = LAW.si("centre", Dimension.TEMPERATURE);
    private static final double WIDTH = LAW.si("width", Dimension.TEMPERATURE);

    /** Temperatures [K] a law is asked for. */
    static final Band TEMPERATURES = new Band(
            Dimension.TEMPERATURE, LAW.si("coldest", Dimension.TEMPERATURE), LAW.si("hottest", Dimension.TEMPERATURE));

    /** Times [s] a law is asked for. */
    static final Band TIMES =
            new Band(Dimension.TIME, LAW.si("shortest", Dimension.TIME), LAW.si("longest", Dimension.TIME));

    /** Longest test in the data [s]. */
    static final double LONGEST_TEST = LAW.si("longest_test", Dimension.TIME);

    /** Time [s] below which a part seldom is at temperature as long as the clock says. */
    static final double SHORT = LAW.si("short", Dimension.TIME);

    /** Least half-width of the interval at short times [HRC]. */
    static final double SHORT_HALF_WIDTH = LAW.si("short_half_width", Dimension.HARDNESS);

    /** End of the C scale [HRC]. */
    static final double SOFT = LAW.si("soft", Dimension.HARDNESS);

    /** Temperature [K] at which the hardness as quenched enters a published curve. */
    static final double ROOM = LAW.si("room", Dimension.TEMPERATURE);

    /** Widest gap [K] between the points of a published curve that a straight line bridges. */
    static final double JOINED = LAW.si("joined", Dimension.TEMPERATURE);

    private static final double TUNGSTEN = LAW.number("tungsten_as_molybdenum");

    private TemperingFigures() {}

    /** The exchange in a steel of this carbon: c = a − b min(C, cap). */
    static HollomonJaffe exchange(double carbon) {
        return new HollomonJaffe(A - B * Math.min(carbon, CAP));
    }

    /** z = (P − centre) / width. */
    static double reduced(double parameter) {
        return (parameter - CENTRE) / WIDTH;
    }

    /** P = centre + width z [K]. */
    static double parameter(double z) {
        return CENTRE + WIDTH * z;
    }

    /** Molybdenum with tungsten counted as such [mass %]. */
    static double molybdenum(Composition steel) {
        return steel.mo() + TUNGSTEN * steel.w();
    }
}
