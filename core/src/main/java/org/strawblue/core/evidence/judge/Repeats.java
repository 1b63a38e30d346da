package org.strawblue.core.evidence.judge;

import org.strawblue.core.evidence.observe.Observation;

/** Whether two looks are one look repeated: the same stick, gun and surface, file, eye and light. */
final class Repeats {

    private static final double NEAR = Looks.kelvin("same-reading");

    private Repeats() {}

    /** Readings further apart than this are no repetition: one of them is wrong, and both must count. */
    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= NEAR;
    }

    static boolean alike(Observation a, Observation b) {
        if (a instanceof Observation.Crayon x && b instanceof Observation.Crayon y) {
            return x.rating() == y.rating() && x.melt() == y.melt();
        }
        if (a instanceof Observation.Infrared x && b instanceof Observation.Infrared y) {
            return x.surface() == y.surface() && x.setting() == y.setting() && near(x.reading(), y.reading());
        }
        if (a instanceof Observation.Colour x && b instanceof Observation.Colour y) {
            return x.light() == y.light() && x.film().equals(y.film());
        }
        if (a instanceof Observation.PartReads x && b instanceof Observation.PartReads y) {
            return x.by().equals(y.by()) && near(x.reading(), y.reading());
        }
        if (a instanceof Observation.SourceReads x && b instanceof Observation.SourceReads y) {
            return x.by().equals(y.by()) && near(x.reading(), y.reading());
        }
        if (a instanceof Observation.File x && b instanceof Observation.File y) {
            return x.level() == y.level() && x.state() == y.state() && x.bite() == y.bite();
        }
        return a.equals(b);
    }
}
