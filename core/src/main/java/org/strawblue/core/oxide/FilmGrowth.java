package org.strawblue.core.oxide;

import org.strawblue.core.history.Trace;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * A film grown through a temperature history.
 *
 * <p>The equivalent time Θ of {@link GrowthLaw} is exact where the temperature stands still; on a straight rise or fall
 * it is a Gauss–Legendre sum over pieces on each of which the exponent changes by 1 at most (relative error below
 * 10⁻¹⁰).
 */
public final class FilmGrowth {

    private static final double GAS_CONSTANT = Film.ALL.inUnit("gas_constant", "J/(mol K)");
    /** Five points, read rather than made: the library's factory takes a tenth of a second to start. */
    private static final Row[] GAUSS =
            Table.of(FilmGrowth.class, "gauss_legendre.csv").rows().toArray(Row[]::new);

    private static final double[] AT = column("at");
    private static final double[] WEIGHT = column("weight");

    private FilmGrowth() {}

    /** The film that air leaves on freshly ground steel [m]. */
    public static double airFormed() {
        return Film.length("air_formed_film");
    }

    /** Thickness [m] after a heat, from an initial thickness [m]. */
    public static double thickness(Trace trace, GrowthLaw law, double initial) {
        return law.thickness(initial, equivalentSeconds(trace, law));
    }

    /** Θ [s]: the time at the law's reference temperature that grows the same film. */
    public static double equivalentSeconds(Trace trace, GrowthLaw law) {
        double sum = 0;
        for (int i = 1; i < trace.size(); i++) {
            double seconds = trace.second(i) - trace.second(i - 1);
            sum += equivalentSeconds(trace.kelvin(i - 1), trace.kelvin(i), seconds, law);
        }
        return sum;
    }

    /** Θ [s] of a straight rise or fall between two temperatures [K] in a time [s]. */
    static double equivalentSeconds(double from, double to, double seconds, GrowthLaw law) {
        return seconds * meanFactor(law, from, to);
    }

    /**
     * Θ [s] from the start to each point of a trace. On each line the exponent is taken as straight, one exponential to a
     * point: for thousands of traces; within 1 % of {@link #equivalentSeconds} where a line spans 20 K or less.
     */
    public static double[] runningSeconds(double[] seconds, double[] kelvin, GrowthLaw law) {
        double[] running = new double[seconds.length];
        double per = -law.activation() / GAS_CONSTANT;
        double before = per * (1 / kelvin[0] - 1 / law.referenceTemperature());
        double factorBefore = Math.exp(before);
        for (int i = 1; i < seconds.length; i++) {
            double now = per * (1 / kelvin[i] - 1 / law.referenceTemperature());
            double factor = Math.exp(now);
            double rise = now - before;
            // near a level the quotient loses its digits and the mean serves
            double mean = Math.abs(rise) < 1e-5 ? (factor + factorBefore) / 2 : (factor - factorBefore) / rise;
            running[i] = running[i - 1] + mean * (seconds[i] - seconds[i - 1]);
            before = now;
            factorBefore = factor;
        }
        return running;
    }

    /** Mean of exp[−(Q/R)(1/T − 1/T₀)] on a straight line between two temperatures. */
    private static double meanFactor(GrowthLaw law, double from, double to) {
        if (from == to) {
            return factor(law, from);
        }
        int pieces = 1 + (int) (law.activation() / GAS_CONSTANT * Math.abs(1 / from - 1 / to));
        double width = (to - from) / pieces;
        double sum = 0;
        for (int i = 0; i < pieces; i++) {
            for (int j = 0; j < AT.length; j++) {
                sum += WEIGHT[j] * factor(law, from + (i + AT[j]) * width);
            }
        }
        return sum / pieces;
    }

    /** exp[−(Q/R)(1/T − 1/T₀)]: how much faster than at the reference temperature. */
    static double factor(GrowthLaw law, double kelvin) {
        return Math.exp(-law.activation() / GAS_CONSTANT * (1 / kelvin - 1 / law.referenceTemperature()));
    }

    /** The temperature [K] at which the factor has a value: its inverse. */
    static double temperatureOfFactor(GrowthLaw law, double factor) {
        return 1 / (1 / law.referenceTemperature() - GAS_CONSTANT / law.activation() * Math.log(factor));
    }

    /** dT/d ln Θ [K] at a temperature: RT²/Q. */
    static double kelvinPerLog(GrowthLaw law, double kelvin) {
        return GAS_CONSTANT * kelvin * kelvin / law.activation();
    }

    private static double[] column(String name) {
        return java.util.Arrays.stream(GAUSS).mapToDouble(r -> r.number(name)).toArray();
    }
}
