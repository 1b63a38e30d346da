package org.strawblue.core.spring.wind;

import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Table;

/** The pitches that most screw-cutting lathes offer. */
final class LathePitch {

    private static final Unit MM = Units.of(Dimension.LENGTH, "mm");

    private LathePitch() {}

    /** [m] */
    static double nearest(double pitch) {
        return Table.of(LathePitch.class, "lathe_pitches.csv").rows().stream()
                .map(r -> MM.toSi(r.number("pitch_mm")))
                .min(java.util.Comparator.comparingDouble(p -> Math.abs(Math.log(p / pitch))))
                .orElseThrow();
    }
}
