package org.strawblue.core.steel;

import java.util.Arrays;
import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Validity;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * Rockwell C to Vickers and back, by the table of ASTM E140 for steels, straight lines between its rows; 20 to 68 HRC,
 * 238 to 940 HV. The scatter between the two scales is taken as one point of Rockwell.
 */
public final class HardnessConversion {

    private static final List<Row> ROWS =
            Table.of(HardnessConversion.class, "hardness-conversion.csv").rows();
    private static final double[] HRC = column("hrc");
    private static final double[] HV = column("hv");
    private static final double SCATTER =
            Constants.of(HardnessConversion.class, "tempering-law.csv").si("scales_scatter", Dimension.HARDNESS);
    private static final Basis E140 = new Basis("hardness conversion", "astm-e140", Standing.PUBLISHED);

    private HardnessConversion() {}

    /** [HRC] to [HV]. */
    public static Answer<Estimate> vickers(double hrc) {
        return limits("Rockwell C hardness", Dimension.HARDNESS, HRC)
                .check(hrc)
                .map(Answer::<Estimate>refused)
                .orElseGet(() -> Answer.of(Estimate.of(
                        Dimension.HARDNESS_VICKERS,
                        between(HRC, HV, hrc),
                        between(HRC, HV, hrc - SCATTER),
                        between(HRC, HV, hrc + SCATTER),
                        E140)));
    }

    /** [HV] to [HRC]. */
    public static Answer<Estimate> rockwell(double hv) {
        return limits("Vickers hardness", Dimension.HARDNESS_VICKERS, HV)
                .check(hv)
                .map(Answer::<Estimate>refused)
                .orElseGet(() -> Answer.of(rockwellWithin(between(HV, HRC, hv))));
    }

    private static Estimate rockwellWithin(double hrc) {
        return Estimate.of(Dimension.HARDNESS, hrc, hrc - SCATTER, hrc + SCATTER, E140);
    }

    private static Validity limits(String input, Dimension dimension, double[] column) {
        return new Validity("ASTM E140", input, new Band(dimension, column[0], column[column.length - 1]));
    }

    private static double between(double[] from, double[] to, double value) {
        int found = Arrays.binarySearch(from, value);
        int i = Math.max(1, Math.min(from.length - 1, found >= 0 ? found : -found - 1));
        double part = (value - from[i - 1]) / (from[i] - from[i - 1]);
        return to[i - 1] + (to[i] - to[i - 1]) * part;
    }

    private static double[] column(String name) {
        return ROWS.stream().mapToDouble(r -> r.number(name)).toArray();
    }
}
