package org.strawblue.core.spring.tolerance;

import java.util.OptionalDouble;
import java.util.TreeMap;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * Tolerance of the load at a length, as a share of it, by the tolerance of free length and the deflection.
 *
 * <p>Printed for length tolerances of 0.005 to 0.040 in and 0.05 to 1.5 in of deflection; between rows it runs straight,
 * beyond them there is no answer. Source: handbook, table of load tolerances, five first rows.
 */
public final class LoadTolerance {

    private LoadTolerance() {}

    /** Plus or minus [1]; absent outside the table. */
    public static OptionalDouble share(double lengthTolerance, double deflection) {
        TreeMap<Double, TreeMap<Double, Double>> table = new TreeMap<>();
        for (Row row : Table.of(LoadTolerance.class, "load.csv").rows()) {
            table.computeIfAbsent(row.number("length_tolerance_in"), k -> new TreeMap<>())
                    .put(row.number("deflection_in"), row.number("load_share"));
        }
        double tolerance = Bands.INCH.fromSi(lengthTolerance);
        double travel = Bands.INCH.fromSi(deflection);
        var below = table.floorEntry(tolerance * (1 + 1e-9));
        var above = table.ceilingEntry(tolerance * (1 - 1e-9));
        if (below == null || above == null || outside(below.getValue(), travel) || outside(above.getValue(), travel)) {
            return OptionalDouble.empty();
        }
        double low = FreeLengthTolerance.between(below.getValue(), travel);
        double high = FreeLengthTolerance.between(above.getValue(), travel);
        double span = above.getKey() - below.getKey();
        double share = span > 0 ? (tolerance - below.getKey()) / span : 0;
        return OptionalDouble.of(low + share * (high - low));
    }

    private static boolean outside(TreeMap<Double, Double> row, double travel) {
        return travel < row.firstKey() * (1 - 1e-9) || travel > row.lastKey() * (1 + 1e-9);
    }
}
