package org.strawblue.core.steel;

import java.util.List;
import org.strawblue.core.history.Trace;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Units;

/**
 * Exchange of time for temperature in tempering: P = T (c + log₁₀ t), T temperature [K], t time [h], c a constant of the
 * steel. Two tempers of equal P soften a steel equally.
 *
 * <p>Repeated tempers and temperatures that change are reckoned by running equivalent time: at each further step the time
 * that would have given the P so far at the new temperature, 10^(P/T − c), counts as already spent. Exact for equal
 * repeated tempers (two of 1 h are one of 2 h); not validated on measured ramps.
 *
 * <p>Source: Hollomon and Jaffe 1945.
 *
 * @param constant c, for time in hours and the decimal logarithm
 */
public record HollomonJaffe(double constant) {

    private static final double HOUR = Units.of(Dimension.TIME, "h").toSi(1);

    /** The parameter of a steel not tempered at all. */
    public static final double NONE = Double.NEGATIVE_INFINITY;

    /** The steps of a changing temperature [K] are no larger than this share of it; the error of P is below 1e-4 of P. */
    private static final double STEP = Math.pow(2, -9);

    /** P [K]. */
    public double parameter(double kelvin, double seconds) {
        return kelvin * (constant + Math.log10(seconds / HOUR));
    }

    /** Time [s] at {@code kelvin} that gives P. */
    public double seconds(double parameter, double kelvin) {
        return Math.pow(10, parameter / kelvin - constant) * HOUR;
    }

    /** Temperature [K] that gives P in a time [s]. */
    public double kelvin(double parameter, double seconds) {
        return parameter / (constant + Math.log10(seconds / HOUR));
    }

    /** P after a further hold, {@code before} being the P already reached, or {@link #NONE}. */
    public double after(double before, double kelvin, double seconds) {
        return parameter(kelvin, seconds(before, kelvin) + seconds);
    }

    /** The single temper at the highest temperature that softens as much as all of these, one after another. */
    public Temper equivalent(List<Temper> tempers) {
        if (tempers.size() == 1) {
            return tempers.get(0);
        }
        double peak = 0;
        double reached = NONE;
        for (Temper temper : tempers) {
            peak = Math.max(peak, temper.kelvin());
            reached = after(reached, temper.kelvin(), temper.seconds());
        }
        return new Temper(peak, seconds(reached, peak));
    }

    /** The single temper at the highest temperature that softens as much as this whole history. */
    public Temper equivalent(Trace trace) {
        double reached = NONE;
        for (int i = 1; i < trace.size(); i++) {
            reached = along(reached, trace, i);
        }
        double peak = trace.peak();
        return new Temper(peak, seconds(reached, peak));
    }

    private double along(double before, Trace trace, int i) {
        return along(before, trace.kelvin(i - 1), trace.kelvin(i), trace.second(i) - trace.second(i - 1));
    }

    /** P after a further straight rise or fall between two temperatures [K] in a time [s]. */
    double along(double before, double from, double to, double seconds) {
        double rise = to - from;
        int steps = 1 + (int) (Math.abs(rise) / (STEP * from));
        double time = seconds / steps;
        double reached = before;
        for (int k = 0; k < steps; k++) {
            reached = after(reached, from + rise * (2 * k + 1) / (2 * steps), time);
        }
        return reached;
    }
}
