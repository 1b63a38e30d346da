package org.strawblue.core.evidence.diagnosis;

import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.steel.CriticalPoints;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.HardeningHeat;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Temper;

/**
 * What is known of the job; any of it may be absent.
 *
 * @param hardenedFrom temperature it was hardened from [K]
 * @param inTheHeat time from cold to the bath [s]
 * @param wanted hardness wanted [HRC]
 */
public record Known(
        Optional<Grade> grade,
        Optional<PartShape> shape,
        Optional<Quenchant> quench,
        Optional<HeatSource> source,
        OptionalDouble hardenedFrom,
        OptionalDouble inTheHeat,
        Optional<Temper> temper,
        Optional<Band> wanted) {

    public static final Known NOTHING = new Known(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty());

    /** Temperature [K] its steel wants to be hardened from. */
    Optional<Estimate> window() {
        return grade.flatMap(g -> CriticalPoints.of(g).value().map(p -> HardeningHeat.window(g, p)));
    }
}
