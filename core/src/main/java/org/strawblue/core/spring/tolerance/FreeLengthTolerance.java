package org.strawblue.core.spring.tolerance;

import java.util.TreeMap;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * Tolerance of free length as a share of it, by active coils for each inch of length and by index; 1.7 times for ends
 * left unground.
 *
 * <p>Printed for 0.5 to 20 coils per inch and index 4 to 16; between rows it runs straight, beyond them the last row counts.
 * Source: handbook, spring makers' institute practice.
 */
public final class FreeLengthTolerance {

    private static final double UNGROUND = Bands.PRACTICE.number("unground");

    private FreeLengthTolerance() {}

    /** Plus or minus [m]. */
    public static double of(Coil coil) {
        double perInch = coil.active() / Bands.INCH.fromSi(coil.free());
        boolean ground =
                coil.ends().first() == EndType.CLOSED_GROUND && coil.ends().second() == EndType.CLOSED_GROUND;
        return coil.free() * share(perInch, coil.index()) * (ground ? 1 : UNGROUND);
    }

    /** [1] */
    public static double share(double coilsPerInch, double index) {
        TreeMap<Double, TreeMap<Double, Double>> byCoils = new TreeMap<>();
        for (Row row : Table.of(FreeLengthTolerance.class, "free_length.csv").rows()) {
            byCoils.computeIfAbsent(row.number("coils_per_in"), k -> new TreeMap<>())
                    .put(row.number("index"), row.number("share"));
        }
        TreeMap<Double, Double> atIndex = new TreeMap<>();
        byCoils.forEach((coils, row) -> atIndex.put(coils, between(row, index)));
        return between(atIndex, coilsPerInch);
    }

    static double between(TreeMap<Double, Double> points, double x) {
        var below = points.floorEntry(x);
        var above = points.ceilingEntry(x);
        if (below == null || above == null) {
            return below == null ? points.firstEntry().getValue() : below.getValue();
        }
        double span = above.getKey() - below.getKey();
        double share = span == 0 ? 0 : (x - below.getKey()) / span;
        return below.getValue() + share * (above.getValue() - below.getValue());
    }
}
