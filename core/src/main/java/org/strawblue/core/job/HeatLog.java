package org.strawblue.core.job;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.evidence.advice.Costs;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.heat.course.Spell;

/**
 * A log of what was seen of one heat.
 *
 * @param heat what was done, absent pieces taken as usual; empty where the log does not say
 */
public record HeatLog(
        String title,
        UnitSystem units,
        Optional<WorkPiece> part,
        List<Spell> heat,
        List<Observation> observations,
        Costs costs) {

    public HeatLog {
        heat = List.copyOf(heat);
        observations = List.copyOf(observations);
    }
}
