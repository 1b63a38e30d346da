package org.strawblue.core.fit;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Band;

/**
 * What to do to one size before hardening and after tempering.
 *
 * @param change of the size by hardening and tempering [m]
 * @param skin poor in carbon on each side [m]; 0 where shielded from air
 * @param before size to make before hardening [m]; absent where the drawing's own will do
 * @param stock left on the size for finishing [m], diameter or thickness; absent where nothing is finished after
 */
public record FinishingPlan(
        Feature feature,
        Route route,
        Estimate change,
        Estimate skin,
        Optional<Band> before,
        Optional<Band> stock,
        List<FinishingStep> stepsBefore,
        List<FinishingStep> stepsAfter) {

    /** When the size is made. */
    public enum Route {
        /** No limits were asked for. */
        AS_IT_COMES,
        /** The limits are wider than what hardening can do to the size. */
        TO_SIZE_BEFORE,
        /** Left large (a hole: small) and finished when hard. */
        FINISHED_HARD
    }

    public FinishingPlan {
        stepsBefore = List.copyOf(stepsBefore);
        stepsAfter = List.copyOf(stepsAfter);
    }
}
