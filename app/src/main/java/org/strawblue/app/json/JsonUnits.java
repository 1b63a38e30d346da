package org.strawblue.app.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumMap;
import java.util.Map;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Table;

/** The unit of each dimension in one system, from {@code units.csv}. */
record JsonUnits(Map<Dimension, Unit> units) {

    private static final MathContext FIGURES = new MathContext(7);

    static JsonUnits of(UnitSystem system) {
        String column = system == UnitSystem.METRIC ? "metric" : "inch";
        Map<Dimension, Unit> units = new EnumMap<>(Dimension.class);
        Table.of(JsonUnits.class, "units.csv").rows().forEach(row -> {
            Dimension dimension = Dimension.valueOf(row.text("dimension"));
            units.put(dimension, Units.of(dimension, row.text(column)));
        });
        return new JsonUnits(units);
    }

    Unit of(Dimension dimension) {
        Unit unit = units.get(dimension);
        if (unit == null) {
            throw new IllegalStateException("units.csv has no row for " + dimension);
        }
        return unit;
    }

    /** In its unit, free of the last digits' noise. */
    double value(Dimension dimension, double si) {
        double value = of(dimension).fromSi(si);
        return Double.isFinite(value) ? new BigDecimal(value).round(FIGURES).doubleValue() : value;
    }
}
