package org.strawblue.core.evidence.judge;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.evidence.sample.Weights;

/**
 * All that was seen of one heat, weighed together.
 *
 * @param peak highest temperature on top [K]
 * @param before the same before anything was seen [K]
 * @param hold time at the peak that tempers as much as the whole heat [s]
 * @param hardness after it [HRC]; absent where the steel is not known
 * @param film thickness on top at the end [m]
 * @param worth of each observation, in the order they were given
 * @param odd those that do not fit the rest
 */
public record Judgement(
        Estimate peak,
        Estimate before,
        Estimate hold,
        Optional<Estimate> hardness,
        Estimate film,
        List<Worth> worth,
        List<Worth> odd,
        List<Finding> findings,
        Ensemble ensemble,
        Weights weights) {

    public Judgement {
        worth = List.copyOf(worth);
        odd = List.copyOf(odd);
        findings = List.copyOf(findings);
    }

    public boolean conflicting() {
        return !odd.isEmpty();
    }
}
