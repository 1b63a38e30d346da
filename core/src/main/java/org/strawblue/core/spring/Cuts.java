package org.strawblue.core.spring;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.quantity.Dimension;

/** Every way in which a spring may be cut shorter and its new end formed. */
public final class Cuts {

    private static final double STEP = Figures.PRACTICE.number("cut_step");
    private static final double LEAST_ACTIVE = Figures.PRACTICE.number("least_active");
    private static final double GROUND_FROM = Figures.PRACTICE.si("ground_from", Dimension.LENGTH);

    private Cuts() {}

    public static List<Cut> of(Coil coil) {
        List<Cut> cuts = new ArrayList<>();
        addTo(cuts, coil, false);
        if (coil.ends().first() != coil.ends().second()) {
            addTo(cuts, coil, true);
        }
        return cuts;
    }

    private static void addTo(List<Cut> cuts, Coil coil, boolean atFirst) {
        EndType old = atFirst ? coil.ends().first() : coil.ends().second();
        for (EndType end : EndType.values()) {
            if (end.ground() && coil.wire() < GROUND_FROM) {
                continue;
            }
            double inactive = new Cut(0, atFirst, end).ends(coil.ends()).inactive();
            // what is left of a closed coil lies dead; only once all of it is off does an open end begin
            double least = end.closed() ? STEP : Math.max(STEP, old.inactive());
            for (double off = least; coil.total() - off - inactive >= LEAST_ACTIVE; off += STEP) {
                cuts.add(new Cut(off, atFirst, end));
            }
        }
    }
}
